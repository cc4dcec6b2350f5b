package headertank.calc.population;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.Rater;
import headertank.calc.population.CarPark.Group;
import headertank.calc.verdict.Verdict;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The car park at a smaller size than that of the docs. {@code -Dheadertank.cars=200 -Dheadertank.samples=256} makes it as
 * large, and prints the table's rows.
 */
class CarParkTest {

    private static final int CARS = Integer.getInteger("headertank.cars", 10);
    private static final int SAMPLES = Integer.getInteger("headertank.samples", 48);
    private static final Rater RATER = Rater.standard();

    private static Map<Verdict, Integer> verdicts(Group group) {
        Map<Verdict, Integer> v = CarPark.verdicts(RATER, group, CARS, SAMPLES);
        System.out.println(CarPark.row(group, CARS, v));
        return v;
    }

    @ParameterizedTest
    @EnumSource(names = "HOPELESS_.*", mode = EnumSource.Mode.MATCH_ALL)
    void hopelessCarsNeverGo(Group group) {
        Map<Verdict, Integer> v = verdicts(group);
        assertThat(v.get(Verdict.GO)).isZero();
        assertThat(v.get(Verdict.NO_GO)).isGreaterThanOrEqualTo((int) Math.floor(0.94 * CARS));
    }

    @ParameterizedTest
    @EnumSource(names = "FANS_OUT")
    void carWithItsFansOutNeverGoes(Group group) {
        assertThat(verdicts(group).get(Verdict.GO)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "HEALTHY_MODERN_STREET, 0.75, 0.05",
        "HEALTHY_OLD_STREET, 0.10, 0.05",
        "WELL_BUILT_TRACK, 0.75, 0.05",
        "WELL_BUILT_DRIFT, 0.65, 0.05"
    })
    void healthyCarsMostlyPass(Group group, double leastGo, double mostNoGo) {
        Map<Verdict, Integer> v = verdicts(group);
        assertThat(v.get(Verdict.GO)).isGreaterThanOrEqualTo((int) Math.floor(leastGo * CARS));
        assertThat(v.get(Verdict.NO_GO)).isLessThanOrEqualTo((int) Math.ceil(mostNoGo * CARS));
    }
}

package headertank.calc.population;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.Rater;
import headertank.calc.population.CarPark.Group;
import headertank.calc.verdict.Verdict;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The car park at a smaller size than that of the docs. {@code -Dheadertank.cars=200 -Dheadertank.samples=256} makes it as
 * large, and prints the table's rows.
 *
 * <p>So few cars can not hold a share itself. What is held is that their number is not so far off that a group which just meets its
 * bar would show it less often than once in a hundred draws (binomial distribution).
 */
class CarParkTest {

    private static final int CARS = Integer.getInteger("headertank.cars", 10);
    private static final int SAMPLES = Integer.getInteger("headertank.samples", 64);

    /** A hopeless car's expected margin alone decides, however few samples go with it. */
    private static final int FEW_SAMPLES = Math.min(SAMPLES, 16);

    private static final double UNLIKELY = 0.01;
    private static final Rater RATER = Rater.standard();

    private static Map<Verdict, Integer> verdicts(Group group, int samples) {
        Map<Verdict, Integer> v = CarPark.verdicts(RATER, group, CARS, samples);
        System.out.println(CarPark.row(group, CARS, v));
        return v;
    }

    @ParameterizedTest
    @EnumSource(names = "HOPELESS_.*", mode = EnumSource.Mode.MATCH_ALL)
    void hopelessCarsNeverGo(Group group) {
        Map<Verdict, Integer> v = verdicts(group, FEW_SAMPLES);
        assertThat(v.get(Verdict.GO)).isZero();
        assertThat(v.get(Verdict.NO_GO)).isGreaterThanOrEqualTo(least(CARS, 0.99));
    }

    @ParameterizedTest
    @EnumSource(names = "FANS_OUT")
    void carWithItsFansOutNeverGoes(Group group) {
        assertThat(verdicts(group, FEW_SAMPLES).get(Verdict.GO)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "HEALTHY_MODERN_STREET, 0.80, 0.02",
        "HEALTHY_OLD_STREET, 0.60, 0.05",
        "WELL_BUILT_TRACK, 0.75, 0.02",
        "WELL_BUILT_DRIFT, 0.75, 0.02"
    })
    void healthyCarsMostlyPass(Group group, double go, double noGo) {
        Map<Verdict, Integer> v = verdicts(group, SAMPLES);
        assertThat(v.get(Verdict.GO)).isGreaterThanOrEqualTo(least(CARS, go));
        assertThat(CARS - v.get(Verdict.NO_GO)).isGreaterThanOrEqualTo(least(CARS, 1 - noGo));
    }

    @Test
    void leastIsThatOfTheBinomialDistribution() {
        assertThat(least(10, 0.5)).as("P(0) 0.001, P(0 or 1) 0.011").isEqualTo(1);
        assertThat(least(10, 0.99))
                .as("P(8 or fewer) 0.004, P(9 or fewer) 0.096")
                .isEqualTo(9);
        assertThat(least(200, 0.80)).isBetween(145, 148);
    }

    /** @return the smallest number of n that is not unlikely where each has this chance */
    private static int least(int n, double chance) {
        double term = Math.pow(1 - chance, n);
        double below = 0;
        int k = 0;
        while (below + term < UNLIKELY) {
            below += term;
            term *= (n - k) / (k + 1.0) * chance / (1 - chance);
            k++;
        }
        return k;
    }
}

package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.YesNo;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.verdict.DutyOutcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is known of a car beside its values: that it has not run hot, and that its maker built it so. */
class EvidenceTest {

    private static final Rater RATER = Rater.standard();
    private static final int SAMPLES = 192;

    @Test
    void notHavingRunHotMakesItLessLikelyThatItWillAndEachSummerMoreSo() {
        double unknown = tooHot(car());
        double oneSummer = tooHot(never(car(), 36));
        double eightSummers = tooHot(never(car(), 36).set(BuildField.NOT_HOT_SUMMERS, Stated.measured(8)));
        assertThat(unknown).as("a car of which it is not sure").isBetween(0.15, 0.85);
        assertThat(oneSummer).isLessThan(unknown - 0.05);
        assertThat(eightSummers).isLessThan(oneSummer);
    }

    /** A cool summer says next to nothing about a hot one. */
    @Test
    void aCoolDaySaysLittle() {
        assertThat(tooHot(never(car(), 15))).isGreaterThan(tooHot(never(car(), 36)) + 0.03);
    }

    @Test
    void beingAsItsMakerBuiltItSaysThatItWasTriedInTheHeat() {
        double asBuilt = tooHot(car().seen(BuildField.AS_BUILT, YesNo.YES));
        assertThat(asBuilt).isLessThan(tooHot(car()) - 0.05);
        assertThat(tooHot(car().seen(BuildField.AS_BUILT, YesNo.NO))).isEqualTo(tooHot(car()));
    }

    /** The margin that is shown is the one that such a car is expected to have, and no value of it is changed. */
    @Test
    void theExpectedMarginsFollowAndTheValuesStay() {
        Build plain = car().build();
        Build told = never(car(), 36)
                .set(BuildField.NOT_HOT_SUMMERS, Stated.measured(8))
                .build();
        DutyOutcome before = outcome(plain);
        DutyOutcome after = outcome(told);
        assertThat(after.coolantMarginK()).isGreaterThan(before.coolantMarginK() + 0.5);
        assertThat(after.points()).isEqualTo(before.points());
        assertThat(after.oilMarginK()).isGreaterThanOrEqualTo(before.oilMarginK());
        assertThat(after.oilSamples().orElseThrow().samples()).isPositive();
    }

    /** Nobody drove a car with a core that is shut through a summer: the build and the story contradict each other. */
    @Test
    void evidenceThatHardlyASampledCarAgreesWithIsLeftOut() {
        Build.Builder shut = car().set(BuildField.CORE_BLOCKED, Stated.measured(0.88));
        assertThat(tooHot(never(shut, 45).set(BuildField.NOT_HOT_SUMMERS, Stated.measured(40))))
                .isEqualTo(tooHot(car().set(BuildField.CORE_BLOCKED, Stated.measured(0.88))))
                .isGreaterThan(0.95);
    }

    private static double tooHot(Build.Builder car) {
        return outcome(car.build()).probabilityTooHot();
    }

    private static DutyOutcome outcome(Build build) {
        return RATER.rate(build, List.of(StandardDuties.STREET), SAMPLES)
                .duty("street")
                .outcome();
    }

    private static Build.Builder never(Build.Builder car, double celsius) {
        return car.set(BuildField.NOT_HOT_DAY, Stated.measured(Physics.kelvin(celsius)));
    }

    /** An old street car with a part of its core shut, where it is hot. */
    private static Build.Builder car() {
        return Build.forCar(CarClass.OLD_STREET)
                .set(BuildField.ENGINE_POWER, Stated.datasheet(75e3))
                .set(BuildField.CORE_BLOCKED, Stated.measured(0.2))
                .set(BuildField.AMBIENT, Stated.measured(Physics.kelvin(38)));
    }
}

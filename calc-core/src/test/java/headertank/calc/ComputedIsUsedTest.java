package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.coolant.PumpInlet;
import headertank.calc.duty.StandardDuties;
import headertank.calc.engine.TaylorCrossCheck;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Balance;
import headertank.calc.risk.Flag;
import headertank.calc.verdict.DutyOutcome;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.Finding;
import headertank.calc.verdict.Verdict;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** What the models compute beside the balance reaches the rating. */
class ComputedIsUsedTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void aPumpThatDrawsVapourCoolsLess() {
        double[] as = CoreWithOneFigureChanged.ask(PumpInlet.class, 60e3, 60e3, WithoutPressure.class);
        double[] worse = CoreWithOneFigureChanged.ask(PumpInlet.class, 60e3, 20e3, WithoutPressure.class);
        assertThat(worse[0]).as("margin").isLessThan(as[0] - 0.02);
        assertThat(worse[1]).as("flow through the radiator").isLessThan(0.99 * as[1]);
        assertThat(RATER.marginK(new WithoutPressure().build, StandardDuties.TRACK))
                .as("the cap's pressure keeps the pump's flow up")
                .isLessThan(RATER.marginK(withCap(1.3e5, 1), StandardDuties.TRACK) - 0.01);
        assertThat(RATER.preview(new WithoutPressure().build, List.of(StandardDuties.TRACK))
                        .duty("track")
                        .findings())
                .extracting(Finding::code)
                .contains(Finding.Code.PUMP_INLET);
    }

    /** The mean temperature of a car whose pump hardly pumps may look well; what the coolant warms by in the engine does not. */
    @Test
    void aPumpThatHardlyPumpsIsNoGoHoweverLargeTheCore() {
        Build.Builder car = Build.forCar(CarClass.TRACK)
                .set(BuildField.ENGINE_POWER, Stated.measured(150e3))
                .set(BuildField.CORE_WIDTH, Stated.measured(0.70))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.48))
                .set(BuildField.AMBIENT, Stated.measured(298.15));
        assertThat(RATER.preview(car.build(), List.of(StandardDuties.TRACK))
                        .duty("track")
                        .findings())
                .extracting(Finding::code)
                .doesNotContain(Finding.Code.COOLANT_RISE);
        DutyVerdict starved = RATER.preview(
                        car.set(BuildField.PUMP_FLOW, Stated.measured(4.5e-4))
                                .set(BuildField.PUMP_HEAD, Stated.measured(2e4))
                                .build(),
                        List.of(StandardDuties.TRACK))
                .duty("track");
        assertThat(starved.outcome().coolantMarginK()).isPositive();
        assertThat(starved.verdict()).isEqualTo(Verdict.NO_GO);
        assertThat(starved.findings())
                .filteredOn(f -> f.verdict() == Verdict.NO_GO)
                .extracting(Finding::code)
                .containsExactly(Finding.Code.COOLANT_RISE);
    }

    @Test
    void aPumpWithPressureAtItsInletIsThatOfItsCurve() {
        Build build = withCap(1.3e5, 1);
        assertThat(RATER.marginK(build, StandardDuties.TRACK))
                .isEqualTo(RATER.marginK(withCap(1.6e5, 1), StandardDuties.TRACK));
    }

    @Test
    void aTiredCapBoilsSooner() {
        double fresh = boilingMarginK(withCap(1.3e5, 1));
        double tired = boilingMarginK(withCap(1.3e5, 0.85));
        assertThat(fresh - tired).isBetween(2.0, 4.0);
        assertThat(tired).isCloseTo(boilingMarginK(withCap(0.85 * 1.3e5, 1)), within(1e-9));
    }

    @Test
    void anOldCarIsTakenToHaveATiredCap() {
        assertThat(RATER.resolve(Build.forCar(CarClass.OLD_STREET).build()).value(BuildField.CAP_HELD))
                .isLessThan(0.9);
        Flag flag = RATER.preview(withCap(1.1e5, 0.2), List.of(StandardDuties.TRACK)).flags().stream()
                .filter(f -> f.ruleId().equals("cap-too-weak"))
                .findFirst()
                .orElseThrow();
        assertThat(flag.consequences())
                .as("what the cap holds, not what its label says")
                .anySatisfy(c -> assertThat(c.value()).isCloseTo(0.22e5, within(1e-6)))
                .noneSatisfy(c -> assertThat(c.value()).isCloseTo(1.1e5, within(1e-6)));
    }

    @Test
    void twoWaysToTheHeatThatDisagreeWidenTheBand() {
        double[] agree =
                CoreWithOneFigureChanged.ask(TaylorCrossCheck.class, 10.4, 10.4, StatedSpreadTest.LouvredCar.class);
        double[] disagree =
                CoreWithOneFigureChanged.ask(TaylorCrossCheck.class, 10.4, 20.8, StatedSpreadTest.LouvredCar.class);
        assertThat(disagree[0]).isEqualTo(agree[0]);
        assertThat(disagree[1]).isGreaterThan(1.05 * agree[1]);
    }

    private static double boilingMarginK(Build build) {
        return RATER.preview(build, List.of(StandardDuties.TRACK))
                .duty("track")
                .outcome()
                .boilingMarginK();
    }

    private static Build withCap(double gaugePa, double heldShare) {
        return Builds.drift()
                .change()
                .set(BuildField.CAP_PRESSURE, Stated.measured(gaugePa))
                .set(BuildField.CAP_HELD, Stated.measured(heldShare))
                .build();
    }

    /** A car whose cap holds nothing: margin and flow through the radiator on the track. */
    public static final class WithoutPressure implements Supplier<double[]> {
        private final Build build = Builds.drift()
                .change()
                .set(BuildField.CAP_PRESSURE, Stated.measured(0))
                .set(BuildField.CAP_HELD, Stated.measured(1))
                .build();

        @Override
        public double[] get() {
            DutyOutcome o = CoreWithOneFigureChanged.rater()
                    .preview(build, List.of(StandardDuties.TRACK))
                    .duty("track")
                    .outcome();
            Balance.Steady s = (Balance.Steady) o.deciding().balance();
            return new double[] {o.coolantMarginK(), s.coolant().radiatorM3PerS()};
        }
    }
}

package headertank.calc.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures: independent prototype of the same equations, printed to two or three decimals. */
class AirPathTest {

    private static final Percentage HALF_PERCENT = Percentage.withPercentage(0.5);

    /**
     * The prototype applied the heating factor to the whole core drop behind a full shroud, but only to its inertia part
     * behind a partial one. This curve has the latter under our rule, which treats both alike.
     */
    private static final CoreDropCurve DRIFT_CORE_PARTLY_HEATED = new CoreDropCurve(17.408 / heating(), 4.5514);

    private static double heating() {
        return (1 + Physics.kelvin(70) / Physics.kelvin(30)) / 2;
    }

    @Test
    void driftCarAtTrackSpeed() {
        AirFlow flow = AirCases.solve(
                AirCases.path(AirCases.drift(0.85, true)),
                AirCases.at(42),
                AirCases.DRIFT_CORE,
                AirCases.DRIFT_FANS,
                AirCases.FULL);
        assertThat(flow.massKgPerS()).isCloseTo(2.810, HALF_PERCENT);
    }

    @ParameterizedTest
    @CsvSource({"0, 1.04", "10, 1.17", "12, 1.223", "18, 1.427", "22, 1.59", "42, 2.60"})
    void fullShroud(double speed, double mass) {
        AirFlow flow = AirCases.solve(
                AirCases.path(AirCases.drift(1, true)),
                AirCases.at(speed),
                AirCases.DRIFT_CORE,
                AirCases.DRIFT_FANS,
                AirCases.FULL);
        assertThat(flow.massKgPerS()).isCloseTo(mass, HALF_PERCENT);
        assertThat(flow.backflowKgPerS()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "10, 1.109, 0.457",
        "20, 1.549, 1.064",
        "40, 2.688, 2.305",
        "60, 3.943, 3.553",
        "12, 1.184, NaN",
        "18, 1.451, NaN",
        "42, 2.81, NaN"
    })
    void fansOnAndOff(double speed, double on, double off) {
        AirPath path = AirCases.path(AirCases.drift(0.85, true));
        AirConditions at = AirCases.at(speed);
        assertThat(AirCases.solve(path, at, DRIFT_CORE_PARTLY_HEATED, AirCases.DRIFT_FANS, AirCases.FULL)
                        .massKgPerS())
                .isCloseTo(on, HALF_PERCENT);
        if (off > 0) {
            assertThat(AirCases.solve(path, at, DRIFT_CORE_PARTLY_HEATED, AirCases.DRIFT_FANS, 0)
                            .massKgPerS())
                    .isCloseTo(off, HALF_PERCENT);
        }
    }

    @Test
    void atRestTheFansDoItAll() {
        AirPath path = AirCases.path(AirCases.drift(0.85, true));
        assertThat(AirCases.solve(path, AirCases.at(0), DRIFT_CORE_PARTLY_HEATED, AirCases.DRIFT_FANS, AirCases.FULL)
                        .massKgPerS())
                .isCloseTo(0.988, HALF_PERCENT);
        AirFlow still = AirCases.solve(path, AirCases.at(0), AirCases.DRIFT_CORE, AirCases.DRIFT_FANS, 0);
        assertThat(still.massKgPerS()).isZero();
        assertThat(still.residualPa()).isZero();
        assertThat(still.recirculationShare()).isCloseTo(0.08, within(1e-12));
        assertThat(AirCases.solve(path, AirCases.at(0), AirCases.DRIFT_CORE, null, 0)
                        .massKgPerS())
                .isZero();
    }

    @ParameterizedTest
    @CsvSource({"0.45, 0.71, 0.13, 0.91, 1.66, 3.07", "0.70, 0.93, 0.12, 1.04, 1.67, 2.95"})
    void barePartsLetAirBackAtRestAndThroughAtSpeed(
            double cover, double atRest, double back, double at10, double at22, double at42) {
        AirPath path = AirCases.path(AirCases.drift(cover, false));
        AirFlow rest =
                AirCases.solve(path, AirCases.at(0), DRIFT_CORE_PARTLY_HEATED, AirCases.DRIFT_FANS, AirCases.FULL);
        assertThat(rest.massKgPerS()).isCloseTo(atRest, within(0.006));
        assertThat(rest.backflowKgPerS()).isCloseTo(back, within(0.007));
        assertThat(rest.recirculationShare()).isGreaterThan(0.08 + 0.1);
        double[] speeds = {10, 22, 42};
        double[] mass = {at10, at22, at42};
        for (int i = 0; i < 3; i++) {
            AirFlow flow = AirCases.solve(
                    path, AirCases.at(speeds[i]), DRIFT_CORE_PARTLY_HEATED, AirCases.DRIFT_FANS, AirCases.FULL);
            assertThat(flow.massKgPerS()).isCloseTo(mass[i], within(0.005 + 0.005 * mass[i]));
        }
    }

    @Test
    void aFullShroudWinsAtLowSpeedAndLosesAtHighSpeed() {
        AirPath full = AirCases.path(AirCases.drift(1, true));
        AirPath part = AirCases.path(AirCases.drift(0.45, false));
        assertThat(mass(full, 0)).isGreaterThan(mass(part, 0));
        assertThat(mass(full, 42)).isLessThan(mass(part, 42));
    }

    @Test
    void pushersMoveLessAndBlockWhenOff() {
        AirPath path = AirCases.path(AirCases.drift(0.85, true));
        Fan pusher = Fan.of(AirCases.pushing(FanSpec.of(2, 0.85, 260, 0.35, 0.12)));
        for (double v : new double[] {0, 10, 22, 42}) {
            assertThat(AirCases.solve(path, AirCases.at(v), AirCases.DRIFT_CORE, pusher, AirCases.FULL)
                            .massKgPerS())
                    .isLessThan(mass(path, v));
        }
    }

    @Test
    void sideslipTakesRamAway() {
        AirConditions straight = AirCases.at(22);
        AirConditions sideways =
                AirCases.dry(22, Math.toRadians(25), straight.pressurePa(), straight.ambientK(), straight.airOutK());
        AirPath path = AirCases.path(AirCases.drift(0.85, true));
        double a = AirCases.solve(path, straight, AirCases.DRIFT_CORE, null, 0).massKgPerS();
        double b = AirCases.solve(path, sideways, AirCases.DRIFT_CORE, null, 0).massKgPerS();
        double cosine = Math.cos(Math.toRadians(25));
        // Losses between linear and square in the flow: ram falls by cos^2, the flow by between cos^2 and cos.
        assertThat(b / a).isBetween(cosine * cosine, cosine);
    }

    @Test
    void anExitAtHighPressureCanTurnTheFlowRound() {
        AirPathSpec spec = new AirPathSpec(0.3, 0.17, 0.18, 0.2, 0.5, 0.8, 1.6, 0.9, 0, 0.8, false, 0.08);
        AirFlow flow =
                AirCases.solve(AirCases.path(spec), AirCases.at(30), AirCases.DRIFT_CORE, AirCases.DRIFT_FANS, 0);
        assertThat(flow.massKgPerS()).isZero();
        assertThat(flow.backflowKgPerS()).isPositive();
        assertThat(flow.recirculationShare()).isEqualTo(Recirculation.SHARE_MAX);
    }

    @Test
    void recirculationAndUpstreamHeatWarmTheInlet() {
        double upstream = 4000 * 0.5 + 1000;
        assertThat(upstream).isEqualTo(3000);
        double in = Recirculation.inletK(300, upstream, 0.2, 40e3, 1000);
        assertThat(in).isCloseTo(313, within(1e-9));
        // A share r of the entering air is core-outlet air, the rest preheated outside air.
        double out = in + 40;
        assertThat(in).isCloseTo(0.2 * out + 0.8 * (300 + 3), within(1e-9));
        assertThat(Recirculation.inletK(300, 0, 0.2, 40e3, 1000)).isCloseTo(0.2 * 350 + 0.8 * 300, within(1e-9));
        assertThatThrownBy(() -> Recirculation.inletK(300, 0, 0.2, 40e3, 0)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void workingIsFiniteAndShowsTheFlow() {
        AirPath path = AirCases.path(AirCases.drift(0.85, true));
        AirFlow flow = AirCases.solve(path, AirCases.at(42), AirCases.DRIFT_CORE, AirCases.DRIFT_FANS, AirCases.FULL);
        assertThat(path.working(AirCases.at(42), flow))
                .allSatisfy(line -> assertThat(line.value()).isFinite())
                .anySatisfy(line -> assertThat(line.value()).isEqualTo(flow.massKgPerS()));
    }

    private static double mass(AirPath path, double speed) {
        return AirCases.solve(path, AirCases.at(speed), AirCases.DRIFT_CORE, AirCases.DRIFT_FANS, AirCases.FULL)
                .massKgPerS();
    }
}

package headertank.calc.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.api.Test;

class AirPathPropertyTest {

    private static final long SEED = 20260801L;
    private static final int CASES = 10_000;

    /** One random case, and a word that finds it again. */
    private record Case(
            String which, AirPathSpec spec, AirConditions at, CoreDropCurve core, Fan fan, double speedFactor) {

        static Case of(long seed, int i) {
            Random r = new Random(seed * 1_000_003L + i);
            AirPathSpec spec = AirCases.path(r);
            AirConditions at = AirCases.conditions(r);
            CoreDropCurve core = AirCases.core(r);
            Fan fan =
                    switch (r.nextInt(6)) {
                        case 0 -> null;
                        case 1, 2 -> Fan.of(AirCases.pushing(AirCases.fan(r)));
                        default -> Fan.of(AirCases.fan(r));
                    };
            double n = r.nextInt(4) == 0 ? 0 : 1.1 * r.nextDouble();
            return new Case("seed " + seed + " case " + i + " " + spec + " " + at, spec, at, core, fan, n);
        }

        AirFlow solve() {
            return solve(AirFactors.NOMINAL);
        }

        AirFlow solve(AirFactors factors) {
            return AirCases.solve(new AirPath(spec, factors), at, core, fan, speedFactor);
        }
    }

    @Test
    void balanceClosesAndNothingIsNaN() {
        for (int i = 0; i < CASES; i++) {
            Case c = Case.of(SEED, i);
            AirFlow f = c.solve();
            assertThat(Math.abs(f.residualPa())).as(c.which()).isLessThan(1e-6);
            assertThat(f.massKgPerS()).as(c.which()).isGreaterThanOrEqualTo(0).isFinite();
            assertThat(f.backflowKgPerS())
                    .as(c.which())
                    .isGreaterThanOrEqualTo(0)
                    .isFinite();
            assertThat(f.recirculationShare()).as(c.which()).isBetween(0.0, Recirculation.SHARE_MAX);
            assertThat(f.fanPressurePa()).as(c.which()).isFinite();
        }
    }

    @Test
    void agreesWithANestedSolveOnThePressure() {
        for (int i = 0; i < 500; i++) {
            Case c = Case.of(SEED + 1, i);
            AirFlow f = c.solve();
            assertThat(f.shroudedM3PerS() + f.bareM3PerS()).as(c.which()).isCloseTo(plain(c), within(1e-6));
        }
    }

    /** The same balance on D in [-3000, 6000] Pa, with an inner solve for the shrouded flow. */
    private static double plain(Case c) {
        double cold = c.at().densityKgPerM3(c.at().airInK());
        double hot = c.at().densityKgPerM3(c.at().airOutK());
        double heating = (1 + cold / hot) / 2;
        AirPathSpec s = c.spec();
        double cover = c.fan() == null ? 1 : s.coveredShare();
        DoubleUnaryOperator flow = d -> {
            double q1 = brent(
                    q -> heating * c.core().dropPa(q / (cover * s.faceAreaM2()))
                            - (c.fan() == null ? 0 : c.fan().riseAtMassPa(q * cold, cold, hot, c.speedFactor()))
                            - d,
                    -60,
                    60);
            double v = c.core().velocityMPerS(d / heating);
            return q1 + (d < 0 && s.flaps() ? 0 : v * (1 - cover) * s.faceAreaM2());
        };
        double v2 = c.at().speedMPerS() * c.at().speedMPerS();
        double cosine = Math.cos(c.at().yawRad());
        double ram = 0.5
                * c.at().densityKgPerM3(c.at().ambientK())
                * v2
                * (s.inletPressureCoefficient() * cosine * cosine - s.exitPressureCoefficient());
        double sealed = s.sealing() * s.inletAreaM2();
        double sine = Math.sin(s.tiltRad());
        double loss = 0.5 * cold * (s.inletLoss() / sealed / sealed + sine * sine / s.faceAreaM2() / s.faceAreaM2())
                + 0.5 * cold * cold / hot * s.exitLoss() / s.exitAreaM2() / s.exitAreaM2();
        double d = brent(
                x -> {
                    double q = flow.applyAsDouble(x);
                    return ram - loss * q * Math.abs(q) - x;
                },
                -3000,
                6000);
        return flow.applyAsDouble(d);
    }

    private static double brent(DoubleUnaryOperator f, double low, double high) {
        return new BracketingNthOrderBrentSolver(1e-14, 1e-13, 1e-13, 5).solve(500, f::applyAsDouble, low, high);
    }

    @Test
    void airRisesWithSpeedAndDuty() {
        for (int i = 0; i < CASES; i++) {
            Case c = Case.of(SEED + 2, i);
            AirPath path = AirCases.path(c.spec());
            AirConditions at = c.at();
            double cosine = Math.cos(at.yawRad());
            double pressure = c.spec().inletPressureCoefficient() * cosine * cosine
                    - c.spec().exitPressureCoefficient();
            AirConditions faster = new AirConditions(
                    at.speedMPerS() + 1,
                    at.yawRad(),
                    at.pressurePa(),
                    at.ambientK(),
                    at.airInK(),
                    at.airOutK(),
                    at.densityFactor());
            double now = net(c.solve());
            double fast = net(AirCases.solve(path, faster, c.core(), c.fan(), c.speedFactor()));
            assertThat(Math.signum(fast - now)).as(c.which()).isEqualTo(Math.signum(pressure));
            if (c.fan() != null) {
                double harder = net(AirCases.solve(path, at, c.core(), c.fan(), c.speedFactor() + 0.1));
                assertThat(harder).as(c.which()).isGreaterThan(now - 1e-9);
            }
        }
    }

    @Test
    void airFallsWithEveryLoss() {
        for (int i = 0; i < CASES; i++) {
            Case c = Case.of(SEED + 3, i);
            double now = Math.abs(net(c.solve()));
            if (now < 1e-6) {
                continue;
            }
            AirPathSpec s = c.spec();
            for (AirPathSpec worse : List.of(
                    with(s, s.inletLoss() * 1.3, s.exitLoss(), s.sealing(), s.tiltRad()),
                    with(s, s.inletLoss(), s.exitLoss() * 1.3, s.sealing(), s.tiltRad()),
                    with(s, s.inletLoss(), s.exitLoss(), s.sealing() * 0.9, s.tiltRad()),
                    with(s, s.inletLoss(), s.exitLoss(), s.sealing(), s.tiltRad() + 0.1))) {
                double then =
                        Math.abs(net(AirCases.solve(AirCases.path(worse), c.at(), c.core(), c.fan(), c.speedFactor())));
                assertThat(then).as(c.which()).isLessThan(now);
            }
            assertThat(Math.abs(net(c.solve(new AirFactors(1.2, 1, 1)))))
                    .as(c.which())
                    .isLessThan(now);
        }
    }

    @Test
    void aFullShroudIsTheLimitOfAPartialOne() {
        for (int i = 0; i < 2000; i++) {
            Case c = Case.of(SEED + 4, i);
            AirFlow full =
                    AirCases.solve(AirCases.path(cover(c.spec(), 1)), c.at(), c.core(), c.fan(), c.speedFactor());
            AirFlow nearly = AirCases.solve(
                    AirCases.path(cover(c.spec(), 1 - 1e-9)), c.at(), c.core(), c.fan(), c.speedFactor());
            assertThat(nearly.massKgPerS()).as(c.which()).isCloseTo(full.massKgPerS(), within(1e-6));
        }
    }

    private static double net(AirFlow f) {
        return f.massKgPerS() - f.backflowKgPerS();
    }

    private static AirPathSpec with(AirPathSpec s, double in, double out, double sealing, double tilt) {
        return new AirPathSpec(
                s.faceAreaM2(),
                s.inletAreaM2(),
                s.exitAreaM2(),
                s.inletPressureCoefficient(),
                s.exitPressureCoefficient(),
                in,
                out,
                sealing,
                tilt,
                s.coveredShare(),
                s.flaps(),
                s.recirculationAtRest());
    }

    private static AirPathSpec cover(AirPathSpec s, double cover) {
        return new AirPathSpec(
                s.faceAreaM2(),
                s.inletAreaM2(),
                s.exitAreaM2(),
                s.inletPressureCoefficient(),
                s.exitPressureCoefficient(),
                s.inletLoss(),
                s.exitLoss(),
                s.sealing(),
                s.tiltRad(),
                cover,
                s.flaps(),
                s.recirculationAtRest());
    }
}

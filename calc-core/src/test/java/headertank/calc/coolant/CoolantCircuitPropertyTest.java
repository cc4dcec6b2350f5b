package headertank.calc.coolant;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.choice.BypassState;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What holds for any circuit; random ones from a fixed seed. */
class CoolantCircuitPropertyTest {

    private static final long SEED = 20260301L;
    private static final int CASES = 20_000;

    private record Case(CircuitSpec spec, DropCurve radiator, double exponent, double speed, double lift, int number) {

        static Case next(SplittableRandom random, int number) {
            PumpSpec pump = new PumpSpec(logUniform(random, 1e4, 5e5), logUniform(random, 3e-4, 3e-2), false);
            double opening = 340 + 30 * random.nextDouble();
            BypassState bypass = BypassState.values()[random.nextInt(4)];
            ThermostatSpec thermostat = random.nextInt(4) == 0
                    ? ThermostatSpec.removed(bypass)
                    : new ThermostatSpec(true, opening, opening + 3 + 20 * random.nextDouble(), bypass);
            CircuitSpec spec = new CircuitSpec(
                    pump,
                    thermostat,
                    3 * random.nextDouble(),
                    random.nextDouble(),
                    random.nextDouble(),
                    logUniform(random, 1, 30),
                    0.5 * random.nextDouble(),
                    0.05 + 0.9 * random.nextDouble());
            double exponent = 1 + random.nextDouble();
            double k = logUniform(random, 1e-4, 1e3) * pump.headAtRatedPa() / Math.pow(pump.maxFlowM3PerS(), exponent);
            return new Case(
                    spec,
                    q -> k * Math.pow(q, exponent),
                    exponent,
                    logUniform(random, 1e-3, 1.5),
                    random.nextDouble(),
                    number);
        }

        CoolantFlow solve() {
            return new CoolantCircuit(spec).solve(speed, lift, radiator);
        }

        CoolantFlow atSpeed(double other) {
            return new CoolantCircuit(spec).solve(other, lift, radiator);
        }

        CoolantFlow atLift(double other) {
            return new CoolantCircuit(spec).solve(speed, other, radiator);
        }

        String name() {
            return "seed " + SEED + ", case " + number + ": " + this;
        }
    }

    @Test
    void balances() {
        SplittableRandom random = new SplittableRandom(SEED);
        int[] calls = {0};
        for (int i = 0; i < CASES; i++) {
            Case c = Case.next(random, i);
            CoolantFlow f = new CoolantCircuit(c.spec()).solve(c.speed(), c.lift(), q -> {
                calls[0]++;
                return c.radiator().dropPa(q);
            });
            double shutOff = c.spec().pump().headAtRatedPa() * c.speed() * c.speed();
            double loop = f.pumpRisePa() - f.blockDropPa() - f.hoseDropPa() - f.thermostatDropPa() - f.radiatorDropPa();

            assertThat(f.radiatorM3PerS()).as(c.name()).isPositive();
            assertThat(f.bypassM3PerS()).as(c.name()).isNotNegative();
            assertThat(f.pumpM3PerS() - f.radiatorM3PerS() - f.bypassM3PerS())
                    .as(c.name())
                    .isBetween(-1e-12 * f.pumpM3PerS(), 1e-12 * f.pumpM3PerS());
            assertThat(Math.abs(loop)).as(c.name()).isLessThanOrEqualTo(1.01e-10 * shutOff);
        }
        assertThat(calls[0] / (double) CASES)
                .as("calls of the drop curve per solve")
                .isLessThan(8);
    }

    @Test
    void moreLiftAndMoreSpeedMoveMoreThroughTheRadiator() {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int i = 0; i < CASES / 4; i++) {
            Case c = Case.next(random, i);
            double flow = c.solve().radiatorM3PerS();

            assertThat(c.atSpeed(1.1 * c.speed()).radiatorM3PerS()).as(c.name()).isGreaterThan(flow);
            double wider = c.atLift(Math.min(1, c.lift() + 0.1)).radiatorM3PerS();
            assertThat(wider).as(c.name()).isGreaterThanOrEqualTo(flow * (1 - 1e-9));
        }
    }

    @Test
    void blockedBypassSendsAllThroughTheRadiator() {
        SplittableRandom random = new SplittableRandom(SEED + 2);
        int seen = 0;
        for (int i = 0; i < CASES / 4; i++) {
            Case c = Case.next(random, i);
            CoolantFlow f = c.solve();
            if (c.spec().thermostat().bypass() == BypassState.BLOCKED) {
                seen++;
                assertThat(f.bypassM3PerS()).as(c.name()).isZero();
                assertThat(f.radiatorM3PerS()).as(c.name()).isEqualTo(f.pumpM3PerS());
            } else {
                assertThat(f.bypassM3PerS()).as(c.name()).isPositive();
            }
        }
        assertThat(seen).isGreaterThan(CASES / 20);
    }

    @Test
    void doubledSpeedDoublesAllFlowsWhenAllLossesAreQuadratic() {
        SplittableRandom random = new SplittableRandom(SEED + 3);
        for (int i = 0; i < CASES / 4; i++) {
            Case c = Case.next(random, i);
            double k = c.radiator().dropPa(c.spec().pump().maxFlowM3PerS())
                    / Math.pow(c.spec().pump().maxFlowM3PerS(), 2);
            CoolantCircuit circuit = new CoolantCircuit(c.spec());
            CoolantFlow once = circuit.solve(c.speed(), c.lift(), q -> k * q * q);
            CoolantFlow twice = circuit.solve(2 * c.speed(), c.lift(), q -> k * q * q);

            assertThat(twice.radiatorM3PerS() / once.radiatorM3PerS())
                    .as(c.name())
                    .isBetween(2 - 1e-8, 2 + 1e-8);
            assertThat(twice.pumpM3PerS() / once.pumpM3PerS()).as(c.name()).isBetween(2 - 1e-8, 2 + 1e-8);
        }
    }

    /** The fast solver against plain bisection on the radiator's flow. */
    @Test
    void agreesWithPlainBisection() {
        SplittableRandom random = new SplittableRandom(SEED + 4);
        for (int i = 0; i < CASES / 10; i++) {
            Case c = Case.next(random, i);
            CircuitSpec s = c.spec();
            CoolantPump pump = CoolantPump.of(s.pump());
            double unit = pump.curvePaS2PerM6();
            double low = 0;
            double high = s.pump().maxFlowM3PerS() * c.speed();
            for (int step = 0; step < 100; step++) {
                double q = 0.5 * (low + high);
                double branch = (s.housingRatio(c.lift()) + s.hoseRatio()) * unit * q * q
                        + c.radiator().dropPa(q);
                double total = q + Math.sqrt(branch / (s.bypassRatio(c.lift()) * unit));
                if (pump.risePa(c.speed(), total) > s.blockRatio() * unit * total * total + branch) {
                    low = q;
                } else {
                    high = q;
                }
            }
            assertThat(c.solve().radiatorM3PerS() / low).as(c.name()).isBetween(1 - 1e-8, 1 + 1e-8);
        }
    }

    private static double logUniform(SplittableRandom random, double min, double max) {
        return min * Math.pow(max / min, random.nextDouble());
    }
}

package headertank.calc.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.choice.BypassState;
import headertank.calc.quantity.OutOfRangeException;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class CoolantCircuitTest {

    private static final double L_PER_MIN = 1.0 / 60000;
    private static final double ROAD_K = 11.81e3 / Math.pow(121.0 * L_PER_MIN, 2);
    private static final PumpSpec ROAD_PUMP = new PumpSpec(130e3, 4.5e-3, false);
    private static final PumpSpec V8_PUMP = new PumpSpec(170e3, 10e-3, false);

    static CoolantCircuit road(BypassState bypass) {
        return new CoolantCircuit(CircuitSpec.of(ROAD_PUMP, new ThermostatSpec(true, 357.15, 369.15, bypass)));
    }

    private static double quadratic(double flow) {
        return ROAD_K * flow * flow;
    }

    /** Source: independent prototype of the same equations. */
    @Test
    void roadCarAtTrackSpeed() {
        CoolantFlow flow = road(BypassState.CLOSES_WITH_LIFT).solve(0.8, 1.0, CoolantCircuitTest::quadratic);

        assertThat(flow.pumpM3PerS() / L_PER_MIN).isCloseTo(122.0, Percentage.withPercentage(0.5));
        assertThat(flow.radiatorM3PerS() / L_PER_MIN).isCloseTo(121.0, Percentage.withPercentage(0.5));
        assertThat(flow.thermostatDropPa()).isCloseTo(9.13e3, Percentage.withPercentage(0.5));
        assertThat(flow.radiatorDropPa()).isCloseTo(11.81e3, Percentage.withPercentage(0.5));
        assertThat(flow.pumpRisePa()).isCloseTo(56.7e3, Percentage.withPercentage(0.5));
        assertThat(flow.residualPa()).isCloseTo(0, within(1e-4));
    }

    /** Source: independent prototype of the same equations; the radiator's drop is taken as Q^1.75 through its fitted case. */
    @Test
    void removedThermostatMovesRadiatorFlow() {
        CoolantCircuit fitted = new CoolantCircuit(CircuitSpec.of(V8_PUMP, ThermostatSpec.fitted(351.15)));
        DropCurve radiator = q -> 10.91e3 * Math.pow(q / (275.4 * L_PER_MIN), 1.75);
        CoolantFlow stock = fitted.solve(0.8, 1.0, radiator);
        CoolantFlow blocked = removed(BypassState.BLOCKED).solve(0.8, 1.0, radiator);
        CoolantFlow open = removed(BypassState.OPEN).solve(0.8, 1.0, radiator);

        assertThat(stock.radiatorM3PerS() / L_PER_MIN).isCloseTo(275.4, Percentage.withPercentage(0.5));
        assertThat(stock.thermostatDropPa()).isCloseTo(12.6e3, Percentage.withPercentage(0.6));
        assertThat(blocked.radiatorM3PerS() / stock.radiatorM3PerS()).isCloseTo(1.07, within(0.005));
        assertThat(open.radiatorM3PerS() / L_PER_MIN).isCloseTo(235.5, Percentage.withPercentage(0.5));
        assertThat(open.pumpM3PerS() / L_PER_MIN).isCloseTo(307.9, Percentage.withPercentage(0.5));
        assertThat(open.radiatorM3PerS() / stock.radiatorM3PerS() - 1).isCloseTo(-0.14, within(0.01));
    }

    @Test
    void nothingClosesTheBypassOfAnEmptyHousing() {
        CoolantFlow foot = removed(BypassState.CLOSES_WITH_LIFT).solve(0.8, 1.0, CoolantCircuitTest::quadratic);
        CoolantFlow open = removed(BypassState.OPEN).solve(0.8, 1.0, CoolantCircuitTest::quadratic);
        CoolantFlow narrow = removed(BypassState.RESTRICTED).solve(0.8, 1.0, CoolantCircuitTest::quadratic);

        assertThat(foot).isEqualTo(open);
        assertThat(narrow.radiatorM3PerS()).isGreaterThan(open.radiatorM3PerS());
        assertThat(narrow.bypassM3PerS()).isPositive().isLessThan(open.bypassM3PerS());
    }

    @Test
    void restrictorPlateRestoresThePressureOfAnOpenThermostat() {
        CircuitSpec empty = CircuitSpec.of(V8_PUMP, ThermostatSpec.removed(BypassState.BLOCKED));
        CircuitSpec fitted = CircuitSpec.of(V8_PUMP, new ThermostatSpec(true, 351.15, 363.15, BypassState.BLOCKED));
        CircuitSpec restricted = new CircuitSpec(
                V8_PUMP,
                empty.thermostat(),
                empty.blockRatio(),
                empty.hoseRatio(),
                empty.thermostatRatio(),
                empty.bypassRatio(),
                empty.thermostatRatio(),
                empty.restrictedAreaShare());
        CoolantFlow plate = new CoolantCircuit(restricted).solve(0.8, 0.3, q -> 1e8 * q * q);
        CoolantFlow open = new CoolantCircuit(fitted).solve(0.8, 1.0, q -> 1e8 * q * q);

        assertThat(plate).isEqualTo(open);
        assertThat(new CoolantCircuit(empty).solve(0.8, 1.0, q -> 1e8 * q * q).thermostatDropPa())
                .isZero();
    }

    @Test
    void stoppedPumpMovesNothing() {
        assertThat(road(BypassState.OPEN).solve(0, 0.5, q -> Double.NaN)).isEqualTo(CoolantFlow.STILL);
    }

    @Test
    void shutThermostatLeaksAFewLitres() {
        CoolantFlow shut = road(BypassState.CLOSES_WITH_LIFT).solve(0.18, 0.0, CoolantCircuitTest::quadratic);
        CoolantFlow leak =
                road(BypassState.CLOSES_WITH_LIFT).solve(0.18, Thermostat.LEAK_LIFT, CoolantCircuitTest::quadratic);

        assertThat(shut).isEqualTo(leak);
        assertThat(shut.radiatorM3PerS() / L_PER_MIN).isBetween(0.1, 3.0);
        assertThat(shut.bypassM3PerS()).isGreaterThan(5 * shut.radiatorM3PerS());
    }

    @Test
    void quadraticRadiatorNeedsTwoCalls() {
        int[] calls = {0};
        road(BypassState.CLOSES_WITH_LIFT).solve(0.8, 0.506, q -> {
            calls[0]++;
            return quadratic(q);
        });

        assertThat(calls[0]).isLessThanOrEqualTo(3);
    }

    @Test
    void aPumpThatDrawsVapourMovesLess() {
        CoolantCircuit circuit = road(BypassState.CLOSES_WITH_LIFT);
        CoolantFlow full = circuit.solve(0.8, 1, CoolantCircuitTest::quadratic);
        CoolantFlow some = circuit.solve(0.8, 1, 0.8, CoolantCircuitTest::quadratic);

        assertThat(circuit.solve(0.8, 1, 1, CoolantCircuitTest::quadratic)).isEqualTo(full);
        assertThat(some.radiatorM3PerS() / full.radiatorM3PerS()).isBetween(0.8, 0.95);
        assertThat(some.pumpRisePa())
                .isCloseTo(
                        some.radiatorDropPa() + some.thermostatDropPa() + some.hoseDropPa() + some.blockDropPa(),
                        within(1e-3));
        assertThatThrownBy(() -> circuit.solve(0.8, 1, 0, CoolantCircuitTest::quadratic))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void refusesWhatItCannotBalance() {
        CoolantCircuit circuit = road(BypassState.OPEN);

        assertThatThrownBy(() -> circuit.solve(0.8, 1, q -> Double.NaN)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> circuit.solve(0.8, 1, q -> -1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> circuit.solve(-0.1, 1, q -> 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> circuit.solve(Double.NaN, 1, q -> 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> circuit.solve(0.8, 1.1, q -> 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> circuit.solve(0.8, 1, q -> q > 1e-3 ? 1e6 : 0))
                .isInstanceOf(NoCoolantBalanceException.class);
        assertThatThrownBy(() -> new PumpSpec(0, 1e-3, false)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void electricPumpDoesNotFollowTheEngine() {
        assertThat(new PumpSpec(50e3, 2e-3, true).speedShare(0.2, 0.9)).isEqualTo(0.9);
        assertThat(ROAD_PUMP.speedShare(0.2, 0.9)).isEqualTo(0.2);
    }

    private static CoolantCircuit removed(BypassState bypass) {
        return new CoolantCircuit(CircuitSpec.of(V8_PUMP, ThermostatSpec.removed(bypass)));
    }
}

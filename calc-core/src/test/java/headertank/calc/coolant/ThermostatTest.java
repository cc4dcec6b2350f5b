package headertank.calc.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.choice.BypassState;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import org.junit.jupiter.api.Test;

class ThermostatTest {

    private static final ThermostatSpec SPEC = ThermostatSpec.fitted(Physics.kelvin(84));

    /** Half of the smooth step above the leak. */
    @Test
    void halfWayBetweenOpeningAndFullyOpen() {
        assertThat(SPEC.fullOpenK()).isCloseTo(Physics.kelvin(96), within(1e-9));
        assertThat(Thermostat.lift(SPEC, Physics.kelvin(90))).isCloseTo(0.503, within(1e-9));
    }

    @Test
    void leaksWhenShutAndStaysOpenAbove() {
        assertThat(Thermostat.lift(SPEC, 200)).isEqualTo(Thermostat.LEAK_LIFT);
        assertThat(Thermostat.lift(SPEC, Double.NaN)).isEqualTo(Thermostat.LEAK_LIFT);
        assertThat(Thermostat.lift(SPEC, Physics.kelvin(97))).isEqualTo(1);
        assertThat(Thermostat.lift(ThermostatSpec.removed(BypassState.OPEN), 200))
                .isEqualTo(1);
    }

    @Test
    void neverClosesWithRisingTemperature() {
        double before = 0;
        for (double t = 350; t < 375; t += 0.01) {
            double lift = Thermostat.lift(SPEC, t);
            assertThat(lift).as("at %s K", t).isGreaterThanOrEqualTo(before).isLessThanOrEqualTo(1);
            assertThat(lift - before).as("step at %s K", t).isLessThan(t > 350 ? 0.002 : 1);
            before = lift;
        }
    }

    @Test
    void refusesAnUpsideDownThermostat() {
        assertThatThrownBy(() -> new ThermostatSpec(true, 360, 355, BypassState.OPEN))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("thermostat.fullOpenK");
    }
}

package headertank.calc.control;

import static headertank.calc.quantity.Physics.kelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import java.util.List;
import org.junit.jupiter.api.Test;

class FanControllerTest {

    private static final FanControlSpec RAMP = FanControlSpec.Ramp.to(kelvin(85));
    private static final FanControlSpec SWITCH = new FanControlSpec.Switch(kelvin(95), 5);
    private static final FanControlSpec STEPS = new FanControlSpec.TwoStep(kelvin(90), kelvin(98), 4, 0.4);
    private static final List<FanControlSpec> ALL =
            List.of(RAMP, SWITCH, STEPS, new FanControlSpec.Ramp(kelvin(85), 0.2, 0.3), new FanControlSpec.AlwaysOn());

    /** Source: independent prototype of the same equations. */
    @Test
    void rampDuty() {
        assertThat(ramp(65)).isZero();
        assertThat(ramp(72)).isCloseTo(0.25, within(1e-9));
        assertThat(ramp(75)).isCloseTo(1.0 / 3, within(1e-9));
        assertThat(ramp(80)).isCloseTo(2.0 / 3, within(1e-9));
        assertThat(ramp(85)).isCloseTo(1, within(1e-9));
        assertThat(ramp(120)).isEqualTo(1);
    }

    @Test
    void switchRemembersInsideItsHysteresis() {
        assertThat(FanController.duty(SWITCH, kelvin(92), false)).isZero();
        assertThat(FanController.duty(SWITCH, kelvin(92), true)).isEqualTo(1);
        assertThat(FanController.duty(SWITCH, kelvin(95), false)).isEqualTo(1);
        assertThat(FanController.duty(SWITCH, kelvin(89.9), true)).isZero();
        assertThat(FanController.duty(SWITCH, Double.NaN, true)).isZero();
    }

    @Test
    void stepsUpAndDown() {
        assertThat(FanController.duty(STEPS, kelvin(89), 0.0)).isZero();
        assertThat(FanController.duty(STEPS, kelvin(91), 0.0)).isEqualTo(0.4);
        assertThat(FanController.duty(STEPS, kelvin(99), 0.4)).isEqualTo(1);
        assertThat(FanController.duty(STEPS, kelvin(95), 1.0)).isEqualTo(1);
        assertThat(FanController.duty(STEPS, kelvin(95), 0.4)).isEqualTo(0.4);
        assertThat(FanController.duty(STEPS, kelvin(93), 1.0)).isEqualTo(0.4);
        assertThat(FanController.duty(STEPS, kelvin(87), 0.4)).isEqualTo(0.4);
        assertThat(FanController.duty(STEPS, kelvin(85), 0.4)).isZero();
    }

    @Test
    void always() {
        assertThat(FanController.duty(new FanControlSpec.AlwaysOn(), 250, false))
                .isEqualTo(1);
    }

    @Test
    void steadyDutyIsContinuousAndNeverFalls() {
        for (FanControlSpec spec : ALL) {
            double before = FanController.steadyDuty(spec, kelvin(40));
            for (double t = 40; t < 120; t += 0.001) {
                double now = FanController.steadyDuty(spec, kelvin(t));
                assertThat(now).as("%s at %s", spec, t).isBetween(before - 1e-15, before + 0.006);
                before = now;
            }
            assertThat(before).isEqualTo(FanController.duty(spec, kelvin(120), false));
        }
    }

    @Test
    void steadyRampEqualsTheRampAboveItsFirstHalfKelvin() {
        for (double t = 70.5; t < 95; t += 0.1) {
            assertThat(FanController.steadyDuty(RAMP, kelvin(t))).as("at %s", t).isEqualTo(ramp(t));
        }
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> new FanControlSpec.Ramp(kelvin(85), 0, 0.25)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new FanControlSpec.TwoStep(370, 360, 4, 0.5)).isInstanceOf(OutOfRangeException.class);
    }

    private static double ramp(double celsius) {
        return FanController.duty(RAMP, kelvin(celsius), false);
    }
}

package headertank.calc.control;

import static headertank.calc.quantity.Physics.kelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import java.util.List;
import org.junit.jupiter.api.Test;

class FanStagesTest {

    private static final FanControlSpec.Table TABLE = new FanControlSpec.Table(
            List.of(
                    new FanControlSpec.Row(kelvin(80), 0),
                    new FanControlSpec.Row(kelvin(90), 0.4),
                    new FanControlSpec.Row(kelvin(100), 1)),
            2);

    @Test
    void aSwitchTurnsOnAtItsSetPointAndOffBelowItsHysteresis() {
        FanControlSpec s = new FanControlSpec.Switch(kelvin(95), 5);
        assertThat(FanStages.stage(s, 0, kelvin(94.99))).isZero();
        assertThat(FanStages.stage(s, 0, kelvin(95))).isOne();
        assertThat(FanStages.stage(s, 1, kelvin(90.01))).isOne();
        assertThat(FanStages.stage(s, 1, kelvin(89.99))).isZero();
        assertThat(FanStages.duty(s, 1, kelvin(91))).isOne();
    }

    @Test
    void twoStepsArePassedOneByOneOrAtOnce() {
        FanControlSpec s = new FanControlSpec.TwoStep(kelvin(90), kelvin(98), 4, 0.4);
        assertThat(FanStages.stage(s, 0, kelvin(92))).isOne();
        assertThat(FanStages.stage(s, 0, kelvin(99))).isEqualTo(2);
        assertThat(FanStages.stage(s, 2, kelvin(95))).isEqualTo(2);
        assertThat(FanStages.stage(s, 2, kelvin(93))).isOne();
        assertThat(FanStages.stage(s, 2, kelvin(80))).isZero();
        assertThat(FanStages.duty(s, 1, kelvin(93))).isEqualTo(0.4);
    }

    @Test
    void aRampHoldsItsSmallestDutyJustBelowItsStart() {
        FanControlSpec r = new FanControlSpec.Ramp(kelvin(85), 15, 0.25);
        assertThat(FanStages.stage(r, 0, kelvin(69.9))).isZero();
        assertThat(FanStages.stage(r, 1, kelvin(69.6))).isOne();
        assertThat(FanStages.stage(r, 1, kelvin(69.4))).isZero();
        assertThat(FanStages.duty(r, 1, kelvin(69.6))).isEqualTo(0.25);
        assertThat(FanStages.duty(r, 1, kelvin(77.5))).isCloseTo(0.5, within(1e-9));
        assertThat(r.softStartS()).isEqualTo(FanControlSpec.USUAL_SOFT_START_S);
    }

    @Test
    void aTableIsStraightBetweenItsRowsAndHeldBeyond() {
        assertThat(TABLE.dutyAt(kelvin(60))).isZero();
        assertThat(TABLE.dutyAt(kelvin(85))).isCloseTo(0.2, within(1e-12));
        assertThat(TABLE.dutyAt(kelvin(95))).isCloseTo(0.7, within(1e-12));
        assertThat(TABLE.dutyAt(kelvin(130))).isOne();
        assertThat(TABLE.dutyAt(Double.NaN)).isZero();
        assertThat(TABLE.startK()).hasValue(kelvin(80));
        assertThat(FanController.duty(TABLE, kelvin(95), 0.0)).isCloseTo(0.7, within(1e-12));
        assertThat(FanController.steadyDuty(TABLE, kelvin(95))).isCloseTo(0.7, within(1e-12));
        assertThat(FanStages.duty(TABLE, FanStages.stage(TABLE, 0, kelvin(95)), kelvin(95)))
                .isCloseTo(0.7, within(1e-12));
    }

    @Test
    void aTableThatFallsOrGoesBackIsRefused() {
        assertThatThrownBy(() -> new FanControlSpec.Table(
                        List.of(new FanControlSpec.Row(350, 0.5), new FanControlSpec.Row(360, 0.4)), 0))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new FanControlSpec.Table(
                        List.of(new FanControlSpec.Row(350, 0.1), new FanControlSpec.Row(350, 0.4)), 0))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new FanControlSpec.Table(List.of(new FanControlSpec.Row(350, 0.1)), 0))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void withoutATemperatureTheStageDoesNotDependOnOne() {
        assertThat(FanStages.stage(new FanControlSpec.AlwaysOn(), 0, 280)).isOne();
        assertThat(FanStages.upK(new FanControlSpec.AlwaysOn(), 0)).isInfinite();
    }
}

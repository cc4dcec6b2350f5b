package headertank.calc.transients;

import static headertank.calc.quantity.Physics.kelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Duty;
import headertank.calc.duty.Schedule;
import headertank.calc.duty.StandardDuties;
import headertank.calc.rating.Plant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Fans set lower before a session: sometimes it buys degrees, sometimes it only overcools. */
class SetPointComparisonTest {

    private static final double WAIT_S = 600;

    private final Plant drift = Plant.of(Rater.standard().resolve(Builds.drift()));

    @Test
    void beforeAShortRunALowerSetPointBuysDegreesForTimeTooCold() {
        SetPointComparison c = SetPointComparison.of(
                drift,
                heats(45, 180),
                FanControlSpec.Ramp.to(kelvin(100)),
                List.of(10.0, 20.0),
                WAIT_S,
                RunSettings.STANDARD);
        SetPointComparison.Lowered some = c.lowered().get(0);
        SetPointComparison.Lowered much = c.lowered().get(1);
        assertThat(some.lowerPeakK()).isGreaterThan(2);
        assertThat(much.lowerPeakK()).isGreaterThan(some.lowerPeakK());
        assertThat(much.worth()).isEqualTo(SetPointComparison.Worth.BUYS_AND_OVERCOOLS);
        assertThat(much.moreSecondsBelow()).isGreaterThan(some.moreSecondsBelow());
        assertThat(much.fewerSecondsAbove()).isPositive();
        assertThat(much.moreAmpereHours()).isGreaterThan(some.moreAmpereHours()).isPositive();
        assertThat(c.usual().peakCoolantK() - much.run().peakCoolantK()).isEqualTo(much.lowerPeakK());
    }

    @Test
    void beforeALongSessionItBuysNothingAndOnlyOvercools() {
        SetPointComparison c = SetPointComparison.of(
                drift, heats(900, 60), FanControlSpec.Ramp.to(kelvin(95)), List.of(20.0), WAIT_S, RunSettings.STANDARD);
        SetPointComparison.Lowered lower = c.lowered().get(0);
        assertThat(lower.lowerPeakK()).isCloseTo(0, within(SetPointComparison.BOUGHT_K));
        assertThat(lower.worth()).isEqualTo(SetPointComparison.Worth.ONLY_OVERCOOLS);
        assertThat(lower.sentence()).contains("nothing").contains("overcools");
        assertThat(lower.moreAmpereHours()).isPositive();
    }

    @Test
    void belowTheThermostatItBuysNothingMore() {
        SetPointComparison c = SetPointComparison.of(
                drift, heats(45, 180), FanControlSpec.Ramp.to(kelvin(70)), List.of(8.0), WAIT_S, RunSettings.STANDARD);
        assertThat(c.lowered().get(0).worth()).isEqualTo(SetPointComparison.Worth.NOTHING);
    }

    @Test
    void everyControlMovesByItsSetPoints() {
        FanControlSpec table = new FanControlSpec.Table(
                List.of(new FanControlSpec.Row(kelvin(80), 0), new FanControlSpec.Row(kelvin(95), 1)), 3);
        for (FanControlSpec c : List.of(
                new FanControlSpec.Switch(kelvin(95), 5),
                new FanControlSpec.TwoStep(kelvin(88), kelvin(95), 4, 0.5),
                FanControlSpec.Ramp.to(kelvin(95)),
                table)) {
            FanControlSpec lower = c.shifted(-10);
            assertThat(lower.startK().orElseThrow()).isCloseTo(c.startK().orElseThrow() - 10, within(1e-9));
            assertThat(lower.stopK().orElseThrow()).isCloseTo(c.stopK().orElseThrow() - 10, within(1e-9));
            assertThat(lower.softStartS()).isEqualTo(c.softStartS());
        }
        assertThat(new FanControlSpec.AlwaysOn().shifted(-10)).isEqualTo(new FanControlSpec.AlwaysOn());
    }

    @Test
    void aStepUpwardsIsRefused() {
        assertThatThrownBy(() -> SetPointComparison.of(
                        drift,
                        StandardDuties.DRIFT,
                        FanControlSpec.Ramp.to(kelvin(90)),
                        List.of(-5.0),
                        0,
                        RunSettings.STANDARD))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-5.0");
    }

    private static Duty heats(double runS, double queueS) {
        return new Duty(
                "session",
                "Session",
                StandardDuties.DRIFT.points(),
                Optional.of(new Schedule(
                        kelvin(85), List.of(new Schedule.Phase("run", runS), new Schedule.Phase("queue", queueS)))),
                "test");
    }
}

package headertank.calc.judged;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.duty.StandardDuties;
import headertank.calc.rating.Plant;
import headertank.calc.result.PointRating;
import headertank.calc.verdict.DutyOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a verdict comes from: steady states, the run, or the worse of both. */
class JudgedDutyTest {

    private static final OperatingPoint SOAK =
            new OperatingPoint("soak", "Engine off", 0, 0, 0, new Demand.EngineOff(0, false), 0);

    private final Plant plant = Plant.of(Rater.standard().resolve(Builds.drift()));
    private final double limitK = plant.resolved().value(BuildField.COOLANT_LIMIT);

    @Test
    void bothTakesTheWorse() {
        DutyOutcome steady = DutyRater.outcome(plant, judged(Duty.Judged.STEADY));
        DutyOutcome run = DutyRater.outcome(plant, judged(Duty.Judged.RUN_AND_IDLE));
        DutyOutcome both = DutyRater.outcome(plant, judged(Duty.Judged.BOTH));
        double atPeak = limitK - both.run().orElseThrow().peaks().coolantK();
        double atSteady = both.points().stream()
                .mapToDouble(PointRating::coolantMarginK)
                .min()
                .orElseThrow();
        assertThat(steady.coolantMarginK()).isEqualTo(atSteady);
        assertThat(run.coolantMarginK()).isCloseTo(atPeak, within(1e-9));
        assertThat(run.decidedByRun()).isTrue();
        assertThat(both.coolantMarginK()).isEqualTo(Math.min(atPeak, atSteady));
        assertThat(both.coolantMarginK()).isLessThan(run.coolantMarginK());
        assertThat(both.boilingMarginK()).isEqualTo(Math.min(steady.boilingMarginK(), run.boilingMarginK()));
        assertThat(DutyRater.margins(plant, judged(Duty.Judged.BOTH))[0])
                .isCloseTo(both.coolantMarginK(), within(1e-6));
    }

    @Test
    void aSoakCountsInTheRunButHasNoSteadyStateAndIsNeverTheCause() {
        DutyOutcome run = DutyRater.outcome(plant, judged(Duty.Judged.RUN_AND_IDLE));
        assertThat(run.points()).extracting(p -> p.point().id()).containsExactly("run", "queue");
        assertThat(run.decidingPointId()).isEqualTo("run");
        assertThat(run.run().orElseThrow().peaks().coolantAtS())
                .as("in the soak")
                .isGreaterThan(285);
        assertThat(run.coolantMarginK()).isFinite();
    }

    @Test
    void withoutAScheduleThereIsNoRunToJudgeBy() {
        assertThat(StandardDuties.TRACK.judged()).isEqualTo(Duty.Judged.STEADY);
        assertThat(StandardDuties.DRIFT.judged()).isEqualTo(Duty.Judged.RUN_AND_IDLE);
        assertThatThrownBy(() ->
                        new Duty("x", "X", StandardDuties.TRACK.points(), Optional.empty(), "test", Duty.Judged.BOTH))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Duty judged(Duty.Judged judged) {
        List<OperatingPoint> points = new ArrayList<>(StandardDuties.DRIFT.points());
        points.add(SOAK);
        Schedule schedule = new Schedule(
                373.15,
                List.of(
                        new Schedule.Phase("queue", 240),
                        new Schedule.Phase("run", 45),
                        new Schedule.Phase("soak", 600)));
        return new Duty("event", "Event", points, Optional.of(schedule), "test", judged);
    }
}

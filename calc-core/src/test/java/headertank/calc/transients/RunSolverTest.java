package headertank.calc.transients;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.rating.Plant;
import headertank.calc.rating.SteadySolver;
import headertank.calc.result.Balance;
import headertank.calc.result.RunResult;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RunSolverTest {

    private static final Rater RATER = Rater.standard();

    private static final List<OperatingPoint> HELD = List.of(
            StandardDuties.DRIFT.point("run"),
            StandardDuties.DRIFT.point("queue"),
            StandardDuties.STREET.point("jam"),
            StandardDuties.STREET.point("hill"),
            StandardDuties.STREET.point("motorway"),
            StandardDuties.TRACK.point("laps"));

    @Test
    void heldLongEnoughItEndsWhereTheSteadySolverDoes() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            for (OperatingPoint p : HELD) {
                Plant plant = plant(build);
                String what = build.carClass() + " " + p.id();
                RunResult run = RunSolver.run(plant, hold(p, 3600));
                Balance.Steady s = (Balance.Steady) new SteadySolver(plant, p).solve();
                RunResult.Sample last = run.trace().get(run.trace().size() - 1);
                assertThat(last.coolantK()).as(what).isCloseTo(s.engineOutK(), within(0.1));
                assertThat(last.oilK()).as(what).isCloseTo(s.oil().oilK(), within(0.1));
                assertThat(last.radiatorK())
                        .as(what)
                        .isCloseTo(
                                s.coolant().radiatorOutK(),
                                within(0.1
                                        + 0.02 * (s.engineOutK() - s.coolant().radiatorOutK())));
            }
        }
    }

    @Test
    void onARampThatIsPartlyOpenItDoesToo() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            OperatingPoint p = StandardDuties.DRIFT.point("queue");
            Plant plant = controlled(build, "RAMP", 95);
            RunResult run = RunSolver.run(plant, hold(p, 3600));
            Balance.Steady s = (Balance.Steady) new SteadySolver(plant, p).solve();
            assertThat(s.air().fanDuty()).as("the ramp is partly open").isBetween(0.05, 0.95);
            assertThat(run.settled().coolantK()).isCloseTo(s.engineOutK(), within(0.1));
            assertThat(run.settled().swingK()).isLessThan(0.1);
        }
    }

    @Test
    void energyInIsEnergyOutAndStored() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            for (String control : List.of("SWITCH", "RAMP", "ALWAYS_ON")) {
                assertThat(RunSolver.run(controlled(build, control, 95), StandardDuties.DRIFT)
                                .energy()
                                .errorShare())
                        .as(build.carClass() + " " + control)
                        .isCloseTo(0, within(1e-9));
            }
        }
    }

    /** Peaks of an independent prototype of the same equations: 99.5 C on the ramp, 104.5 C on the switch. */
    @Test
    void aRampPreCoolsAndPeaksLowerThanASwitch() {
        RunResult ramp = RunSolver.run(controlled(Builds.drift(), "RAMP", 85), StandardDuties.DRIFT);
        RunResult onOff = RunSolver.run(controlled(Builds.drift(), "SWITCH", 95), StandardDuties.DRIFT);
        assertThat(ramp.peaks().coolantK()).isLessThan(onOff.peaks().coolantK() - 2);
        assertThat(ramp.fanStarts()).isLessThan(onOff.fanStarts());
        assertThat(ramp.charge().fanAmpereHours()).isGreaterThan(onOff.charge().fanAmpereHours());
        assertThat(Physics.celsius(ramp.peaks().coolantK())).isCloseTo(105.6, within(0.5));
        assertThat(Physics.celsius(onOff.peaks().coolantK())).isCloseTo(111.1, within(0.5));
    }

    @Test
    void aRunEndsLongBeforeTheSteadyStateOfAnEndlessOne() {
        Plant plant = plant(Builds.drift());
        Balance.Steady endless = (Balance.Steady) new SteadySolver(plant, StandardDuties.DRIFT.point("run")).solve();
        assertThat(RunSolver.run(plant, StandardDuties.DRIFT).peaks().coolantK())
                .isLessThan(endless.engineOutK() - 15);
    }

    @Test
    void moreCoolantMeansALowerPeak() {
        assertThat(peakWithVolume(0.018)).isLessThan(peakWithVolume(0.007));
    }

    @Test
    void theTraceCoversTheWholeSchedule() {
        RunResult run = RunSolver.run(plant(Builds.road()), StandardDuties.DRIFT);
        double length = StandardDuties.DRIFT.schedule().orElseThrow().lengthS();
        assertThat(run.trace().get(0).timeS()).isZero();
        assertThat(run.trace().get(run.trace().size() - 1).timeS()).isBetween(length - 5, length);
    }

    @Test
    void aDutyWithoutAScheduleCannotBeRun() {
        assertThatThrownBy(() -> RunSolver.run(plant(Builds.road()), StandardDuties.TRACK))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("track");
    }

    private static double peakWithVolume(double volumeM3) {
        Build build = Builds.drift()
                .change()
                .set(BuildField.COOLANT_VOLUME, Stated.measured(volumeM3))
                .build();
        return RunSolver.run(plant(build), StandardDuties.DRIFT).peaks().coolantK();
    }

    private static Plant controlled(Build build, String kind, double celsius) {
        return plant(build.change()
                .seen(BuildField.CONTROL_KIND, kind)
                .set(BuildField.CONTROL_SET, Stated.measured(Physics.kelvin(celsius)))
                .build());
    }

    private static Plant plant(Build build) {
        return Plant.of(RATER.resolve(build));
    }

    private static Duty hold(OperatingPoint p, double seconds) {
        return new Duty(
                "hold",
                "Hold",
                List.of(p),
                Optional.of(new Schedule(Physics.kelvin(85), List.of(new Schedule.Phase(p.id(), seconds)))),
                "test");
    }
}

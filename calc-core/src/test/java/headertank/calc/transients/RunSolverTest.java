package headertank.calc.transients;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.build.Build;
import headertank.calc.build.BuildField;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.rating.Balance;
import headertank.calc.rating.Plant;
import headertank.calc.rating.SteadySolver;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RunSolverTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void heldLongEnoughItEndsWhereTheSteadySolverDoes() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            for (String point : List.of("run", "queue")) {
                OperatingPoint p = StandardDuties.DRIFT.point(point);
                Plant plant = plant(build);
                RunResult run = RunSolver.run(plant, hold(p, 3600));
                Balance.Steady s = (Balance.Steady) new SteadySolver(plant, p).solve();
                RunResult.Sample last = run.trace().get(run.trace().size() - 1);
                assertThat(last.coolantK()).as(point).isCloseTo(s.engineOutK(), within(0.5));
                assertThat(last.oilK()).as(point).isCloseTo(s.oilK(), within(1.0));
            }
        }
    }

    @Test
    void energyInIsEnergyOutAndStored() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            assertThat(RunSolver.run(plant(build), StandardDuties.DRIFT).energyErrorShare())
                    .isCloseTo(0, within(1e-9));
        }
    }

    /** Peaks of an independent prototype of the same equations: 99.5 C on the ramp, 104.5 C on the switch. */
    @Test
    void aRampPreCoolsAndPeaksLowerThanASwitch() {
        RunResult ramp = RunSolver.run(controlled("RAMP", 85), StandardDuties.DRIFT);
        RunResult onOff = RunSolver.run(controlled("SWITCH", 95), StandardDuties.DRIFT);
        assertThat(ramp.peakCoolantK()).isLessThan(onOff.peakCoolantK() - 2);
        assertThat(ramp.fanStarts()).isLessThan(onOff.fanStarts());
        assertThat(ramp.fanAmpereHours()).isGreaterThan(onOff.fanAmpereHours());
        assertThat(Physics.celsius(ramp.peakCoolantK())).isCloseTo(99.5, within(3.0));
        assertThat(Physics.celsius(onOff.peakCoolantK())).isCloseTo(104.5, within(3.0));
    }

    @Test
    void aRunEndsLongBeforeTheSteadyStateOfAnEndlessOne() {
        Plant plant = plant(Builds.drift());
        Balance.Steady endless = (Balance.Steady) new SteadySolver(plant, StandardDuties.DRIFT.point("run")).solve();
        assertThat(RunSolver.run(plant, StandardDuties.DRIFT).peakCoolantK()).isLessThan(endless.engineOutK() - 15);
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
        return RunSolver.run(plant(build), StandardDuties.DRIFT).peakCoolantK();
    }

    private static Plant controlled(String kind, double celsius) {
        return plant(Builds.drift()
                .change()
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

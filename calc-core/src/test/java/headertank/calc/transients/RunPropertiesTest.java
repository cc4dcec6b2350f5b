package headertank.calc.transients;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.Plant;
import headertank.calc.rating.SteadySolver;
import headertank.calc.result.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Random cars through a drift event with a soak: whatever the car, the sums hold and the numbers are numbers. */
class RunPropertiesTest {

    private static final int CARS = Integer.getInteger("headertank.runs", 300);
    private static final FanControlSpec SWITCH = new FanControlSpec.Switch(Physics.kelvin(92), 1);

    @Test
    void energyHoldsAndNumbersAreNumbersForAnyCar() {
        int ran = 0;
        for (long seed = 1; seed <= CARS; seed++) {
            Plant plant;
            try {
                plant = plant(seed);
            } catch (InputException | OutOfRangeException refused) {
                continue;
            }
            for (RunSettings s : List.of(
                    RunSettings.STANDARD, RunSettings.STANDARD.with(SWITCH).with(RunFaults.oneFanOut()))) {
                RunResult run = RunSolver.run(plant, EVENT, s);
                assertThat(run.energy().errorShare()).as("seed %s", seed).isCloseTo(0, within(1e-8));
                assertThat(run.peaks().coolantK())
                        .as("seed %s", seed)
                        .isFinite()
                        .isGreaterThanOrEqualTo(358.15);
                assertThat(run.peaks().oilK()).as("seed %s", seed).isFinite();
                assertThat(run.numerics().eventErrorK()).as("seed %s", seed).isLessThan(1e-3);
                run.trace().forEach(t -> {
                    assertThat(t.coolantK()).isFinite();
                    assertThat(t.fanDuty()).isBetween(0.0, 1.0);
                    assertThat(t.thermostatLift()).isBetween(0.0, 1.0);
                    assertThat(t.voltageV()).isBetween(0.0, 13.5);
                });
            }
            RunResult peaks = RunSolver.run(plant, EVENT, RunSettings.PEAKS_ONLY);
            double full = RunSolver.run(plant, EVENT).peaks().coolantK();
            assertThat(peaks.peaks().coolantK())
                    .as("seed %s; beyond the hottest state that the table holds only roughly", seed)
                    .isCloseTo(full, within(full < SteadySolver.HOTTEST_K ? 0.1 : 1));
            ran++;
        }
        assertThat(ran).isGreaterThan(CARS / 2);
    }

    private static final Duty EVENT = event();

    private static Duty event() {
        List<OperatingPoint> points = new ArrayList<>(StandardDuties.DRIFT.points());
        points.add(new OperatingPoint("soak", "Engine off", 0, 0, 0, new Demand.EngineOff(0.4, true), 0));
        List<Schedule.Phase> phases = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            phases.add(new Schedule.Phase("run", 45));
            phases.add(new Schedule.Phase("queue", 120));
        }
        phases.add(new Schedule.Phase("soak", 300));
        return new Duty("event", "Event", points, Optional.of(new Schedule(358.15, phases)), "test");
    }

    private static Plant plant(long seed) {
        Build build = Builds.random(seed);
        return Plant.of(Rater.standard().resolve(build));
    }
}

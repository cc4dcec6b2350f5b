package headertank.calc;

import headertank.calc.carspec.Build;
import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Duty;
import headertank.calc.duty.Schedule;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import headertank.calc.transients.RunSettings;
import headertank.calc.transients.RunSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Runs over time on one thread, the tables of the cooling made anew in each. Goal: a session of half an hour in 30 ms. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
@State(Scope.Benchmark)
public class RunBenchmark {

    @Param({"ramp", "switch"})
    public String control;

    private final Build car = Builds.drift();
    private Plant plant;
    private Duty session;
    private RunSettings settings;

    @Setup
    public void build() {
        plant = Plant.of(Rater.standard().resolve(car));
        settings = RunSettings.STANDARD.with(
                control.equals("ramp")
                        ? FanControlSpec.Ramp.to(Physics.kelvin(90))
                        : new FanControlSpec.Switch(Physics.kelvin(95), 5));
        List<Schedule.Phase> phases = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            phases.add(new Schedule.Phase("run", 45));
            phases.add(new Schedule.Phase("queue", 180));
        }
        session = new Duty(
                "session",
                "Half an hour of heats",
                StandardDuties.DRIFT.points(),
                Optional.of(new Schedule(Physics.kelvin(85), phases)),
                "benchmark");
    }

    /** Half an hour with ten samples of the trace per second. */
    @Benchmark
    public RunResult halfAnHourAtTenHertz() {
        return RunSolver.run(plant, session, settings.at(10));
    }

    /** The drift duty as sampling runs it. */
    @Benchmark
    public RunResult peaksOfTheDriftDuty() {
        return RunSolver.run(plant, StandardDuties.DRIFT, new RunSettings(settings.control(), settings.faults(), 0, true));
    }
}

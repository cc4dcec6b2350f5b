package headertank.calc;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.StandardDuties;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.result.PointRating;
import headertank.calc.result.RunResult;
import headertank.calc.transients.RunSolver;
import java.util.ArrayList;
import java.util.List;
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

/** One build against the three standard duties, from nothing: no object outlives a measurement but the rater itself. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
@State(Scope.Benchmark)
public class RatingBenchmark {

    private static final List<Duty> DUTIES = List.of(StandardDuties.STREET, StandardDuties.TRACK, StandardDuties.DRIFT);

    @Param({"road", "track", "drift"})
    public String car;

    private final Rater rater = Rater.standard();
    private Plant plant;

    @Setup
    public void build() {
        plant = Plant.of(rater.resolve(car()));
    }

    private Build car() {
        return switch (car) {
            case "road" -> Builds.road();
            case "track" -> Builds.track();
            default -> Builds.drift();
        };
    }

    /** Build, resolved values, models, and every operating point at its steady state with all its figures. */
    @Benchmark
    public List<PointRating> buildAgainstThreeDuties() {
        Plant cold = Plant.of(rater.resolve(car()));
        List<PointRating> rated = new ArrayList<>();
        for (Duty duty : DUTIES) {
            for (OperatingPoint point : duty.points()) {
                rated.add(PointRater.rate(cold, point));
            }
        }
        return rated;
    }

    /** The part of it that does not solve anything. */
    @Benchmark
    public Plant models() {
        return Plant.of(rater.resolve(car()));
    }

    @Benchmark
    public Resolved resolve() {
        return rater.resolve(car());
    }

    /** The drift duty over time. */
    @Benchmark
    public RunResult run() {
        return RunSolver.run(plant, StandardDuties.DRIFT);
    }

    /** Verdicts and flags, run over time included, without uncertainty. */
    @Benchmark
    public Rating preview() {
        return rater.preview(car(), DUTIES);
    }

    /** The same with 256 samples per duty. */
    @Benchmark
    public Rating full() {
        return rater.rate(car(), DUTIES);
    }
}

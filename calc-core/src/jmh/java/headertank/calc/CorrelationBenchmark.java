package headertank.calc;

import headertank.calc.fluid.Air;
import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.GlycolKind;
import headertank.calc.radiator.CrossFlow;
import headertank.calc.radiator.FinEfficiency;
import headertank.calc.radiator.LouveredFins;
import headertank.calc.radiator.TubeFlow;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Properties and correlations one by one, with arguments that move so that nothing can be remembered. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@State(Scope.Thread)
public class CorrelationBenchmark {

    private static final int MASK = 1023;

    private final Coolant glycol = Coolant.ofVolumeFraction(GlycolKind.ETHYLENE, 0.5);
    private final Coolant water = Coolant.of(GlycolKind.NONE, 0);
    private final TubeFlow tubes = new TubeFlow(0.1, 0.005, false);
    private final LouveredFins fins =
            new LouveredFins(1.4e-3, 8e-3, 0.026, 1.2e-3, 27, 6.5e-3, 8e-5, 2e-3, 2.3e-3);
    private final double[] share = new double[MASK + 1];
    private int at;

    /** Fills the shares by a golden-ratio sequence: even, and without a pattern that a branch predictor could learn. */
    public CorrelationBenchmark() {
        for (int i = 0; i <= MASK; i++) {
            share[i] = i * 0.6180339887498949 % 1;
        }
    }

    private double next(double from, double to) {
        at = at + 1 & MASK;
        return from + share[at] * (to - from);
    }

    @Benchmark
    public double glycolDensity() {
        return glycol.densityKgPerM3(next(300, 390));
    }

    @Benchmark
    public double glycolHeatCapacity() {
        return glycol.heatCapacityJPerKgK(next(300, 390));
    }

    @Benchmark
    public double glycolConductivity() {
        return glycol.conductivityWPerMK(next(300, 390));
    }

    @Benchmark
    public double glycolViscosity() {
        return glycol.viscosityPaS(next(300, 390));
    }

    @Benchmark
    public double glycolVapourPressure() {
        return glycol.vapourPressurePa(next(300, 390));
    }

    @Benchmark
    public double waterViscosity() {
        return water.viscosityPaS(next(300, 390));
    }

    @Benchmark
    public double waterVapourPressure() {
        return water.vapourPressurePa(next(300, 390));
    }

    @Benchmark
    public double airDensityMoist() {
        return Air.densityKgPerM3(101325, next(260, 320), 0.5);
    }

    @Benchmark
    public double airViscosity() {
        return Air.viscosityPaS(next(260, 400));
    }

    @Benchmark
    public double airConductivity() {
        return Air.conductivityWPerMK(next(260, 400));
    }

    @Benchmark
    public double louveredColburn() {
        return fins.colburn(next(80, 2000));
    }

    @Benchmark
    public double louveredFriction() {
        return fins.friction(next(80, 2000));
    }

    @Benchmark
    public double finEfficiency() {
        return FinEfficiency.ofProduct(next(0.2, 2));
    }

    @Benchmark
    public double tubeNusselt() {
        return tubes.nusselt(next(500, 12_000), 5);
    }

    @Benchmark
    public double tubeFriction() {
        return tubes.friction(next(500, 12_000));
    }

    @Benchmark
    public double crossFlowEffectiveness() {
        return CrossFlow.effectiveness(next(0.3, 3), next(0.1, 1));
    }
}

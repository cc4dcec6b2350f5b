package headertank.calc.attribution;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.Change;
import headertank.calc.result.Attribution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;

/** Shares out the degrees of margin that lie between two builds among their differences, by {@link Shapley} shares. */
public final class Shares {

    /** Sampled orders for more than {@link Shapley#EXACT_UP_TO} differences, each followed by its reverse. */
    private static final int ORDERS = 24;

    private static final long SEED = 20260101L;

    private Shares() {}

    /**
     * @param before the earlier build
     * @param after the later build
     * @param marginK margin of a build for the duty [K]; finite, deterministic, and callable from several threads at once
     */
    public static Attribution between(Build before, Build after, ToDoubleFunction<Build> marginK) {
        List<Change> changes = Change.between(before, after);
        int k = changes.size();
        long all = (1L << k) - 1;
        LongToDoubleFunction mixed = mask -> {
            Build build = before;
            for (int i = 0; i < k; i++) {
                if ((mask & 1L << i) != 0) {
                    build = changes.get(i).apply(build, after);
                }
            }
            return marginK.applyAsDouble(build);
        };
        LongToDoubleFunction value = k <= Shapley.EXACT_UP_TO ? atOnce(k, mixed) : Shapley.once(mixed);
        double[] shares = Shapley.shares(k, value, ORDERS, SEED);
        List<Attribution.Effect> effects = new ArrayList<>();
        for (int i = 0; i < k; i++) {
            long only = 1L << i;
            effects.add(new Attribution.Effect(
                    changes.get(i),
                    value.applyAsDouble(only) - value.applyAsDouble(0),
                    value.applyAsDouble(all) - value.applyAsDouble(all & ~only),
                    shares[i]));
        }
        effects.sort(Comparator.comparingDouble(Attribution.Effect::shareK));
        return new Attribution(value.applyAsDouble(0), value.applyAsDouble(all), effects, k <= Shapley.EXACT_UP_TO);
    }

    /** Every combination, on all cores; which core had which changes no digit. */
    private static LongToDoubleFunction atOnce(int k, LongToDoubleFunction mixed) {
        double[] values =
                LongStream.range(0, 1L << k).parallel().mapToDouble(mixed).toArray();
        return mask -> values[(int) mask];
    }
}

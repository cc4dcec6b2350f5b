package headertank.calc.attribution;

import headertank.calc.carspec.Build;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;

/**
 * How many degrees of margin each difference between two builds cost or gained, for one duty.
 *
 * @param beforeK margin before [K]
 * @param afterK margin after [K]
 * @param effects one line per difference, costliest first
 * @param exact whether the shares come from all combinations rather than from sampled orders
 */
public record Attribution(double beforeK, double afterK, List<Effect> effects, boolean exact) {

    /** Sampled orders for more than {@link Shapley#EXACT_UP_TO} differences, each followed by its reverse. */
    private static final int ORDERS = 24;

    private static final long SEED = 20260101L;

    public Attribution {
        effects = List.copyOf(effects);
    }

    /**
     * Effect of one difference on the margin; positive gains margin.
     *
     * @param change the difference
     * @param aloneK margin of the car before with this difference alone, minus the margin before [K]
     * @param lastK margin after, minus the margin after with this difference undone [K]
     * @param shareK Shapley share; the shares of all differences sum to the whole difference [K]
     */
    public record Effect(Change change, double aloneK, double lastK, double shareK) {}

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
        List<Effect> effects = new ArrayList<>();
        for (int i = 0; i < k; i++) {
            long only = 1L << i;
            effects.add(new Effect(
                    changes.get(i),
                    value.applyAsDouble(only) - value.applyAsDouble(0),
                    value.applyAsDouble(all) - value.applyAsDouble(all & ~only),
                    shares[i]));
        }
        effects.sort(Comparator.comparingDouble(Effect::shareK));
        return new Attribution(value.applyAsDouble(0), value.applyAsDouble(all), effects, k <= Shapley.EXACT_UP_TO);
    }

    /** Every combination, on all cores; which core had which changes no digit. */
    private static LongToDoubleFunction atOnce(int k, LongToDoubleFunction mixed) {
        double[] values =
                LongStream.range(0, 1L << k).parallel().mapToDouble(mixed).toArray();
        return mask -> values[(int) mask];
    }
}

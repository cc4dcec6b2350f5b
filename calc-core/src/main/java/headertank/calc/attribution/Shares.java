package headertank.calc.attribution;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.Change;
import headertank.calc.result.Attribution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        Map<String, List<Integer>> byPart = new LinkedHashMap<>();
        for (int i = 0; i < k; i++) {
            String name =
                    changes.get(i).part().map(Enum::name).orElse(changes.get(i).key());
            byPart.computeIfAbsent(name, n -> new ArrayList<>()).add(i);
        }
        List<Attribution.PartEffect> parts = new ArrayList<>();
        byPart.values().forEach(which -> parts.add(part(changes, which, all, shares, value)));
        parts.sort(Comparator.comparingDouble(Attribution.PartEffect::shareK));
        return new Attribution(value.applyAsDouble(0), value.applyAsDouble(all), parts, k <= Shapley.EXACT_UP_TO);
    }

    private static Attribution.PartEffect part(
            List<Change> changes, List<Integer> which, long all, double[] shares, LongToDoubleFunction value) {
        List<Attribution.Effect> effects = new ArrayList<>();
        long whole = 0;
        double share = 0;
        for (int i : which) {
            whole |= 1L << i;
            share += shares[i];
            effects.add(new Attribution.Effect(
                    changes.get(i), alone(1L << i, value), undone(1L << i, all, value), shares[i]));
        }
        effects.sort(Comparator.comparingDouble(Attribution.Effect::shareK));
        return new Attribution.PartEffect(
                changes.get(which.get(0)).part(), effects, alone(whole, value), undone(whole, all, value), share);
    }

    private static double alone(long mask, LongToDoubleFunction value) {
        return value.applyAsDouble(mask) - value.applyAsDouble(0);
    }

    private static double undone(long mask, long all, LongToDoubleFunction value) {
        return value.applyAsDouble(all & ~mask) - value.applyAsDouble(all);
    }

    /** Every combination, on all cores; which core had which changes no digit. */
    private static LongToDoubleFunction atOnce(int k, LongToDoubleFunction mixed) {
        double[] values =
                LongStream.range(0, 1L << k).parallel().mapToDouble(mixed).toArray();
        return mask -> values[(int) mask];
    }
}

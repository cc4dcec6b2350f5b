package headertank.calc.attribution;

import java.util.HashMap;
import java.util.Map;
import java.util.function.LongToDoubleFunction;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Shapley values of any set function: the share of each of k changes in the difference that all of them make together,
 * averaged over the orders in which they could have been made. The shares sum to the difference.
 *
 * @see "L. S. Shapley, A value for n-person games, Contributions to the Theory of Games II (1953) 307-317 (from memory)"
 */
public final class Shapley {

    /** Up to this many changes all subsets are evaluated; above, orders are sampled. */
    public static final int EXACT_UP_TO = 8;

    private Shapley() {}

    /**
     * @param k number of changes, 0 to 62
     * @param value value of a set of changes, given as a bit mask; must be deterministic
     * @param orders number of sampled orders when {@code k} exceeds {@link #EXACT_UP_TO}; each order is followed by its
     *     reverse
     * @param seed seed of the sampled orders
     * @return share of each change, in the unit of {@code value}; they sum to value(all) - value(none)
     */
    public static double[] shares(int k, LongToDoubleFunction value, int orders, long seed) {
        if (k < 0 || k > 62) {
            throw new IllegalArgumentException("number of changes = " + k + ": allowed is 0 to 62");
        }
        return k <= EXACT_UP_TO ? exact(k, once(value)) : sampled(k, once(value), orders, seed);
    }

    /** The same values, each asked for once. */
    static LongToDoubleFunction once(LongToDoubleFunction value) {
        Map<Long, Double> known = new HashMap<>();
        return mask -> known.computeIfAbsent(mask, value::applyAsDouble);
    }

    private static double[] exact(int k, LongToDoubleFunction value) {
        double[] weight = new double[k];
        for (int size = 0; size < k; size++) {
            weight[size] = factorial(size) * factorial(k - 1 - size) / factorial(k);
        }
        double[] shares = new double[k];
        for (long mask = 0; mask < 1L << k; mask++) {
            double without = value.applyAsDouble(mask);
            for (int i = 0; i < k; i++) {
                if ((mask & 1L << i) == 0) {
                    shares[i] += weight[Long.bitCount(mask)] * (value.applyAsDouble(mask | 1L << i) - without);
                }
            }
        }
        return shares;
    }

    private static double[] sampled(int k, LongToDoubleFunction value, int orders, long seed) {
        RandomGenerator random = new Well19937c(seed);
        double[] shares = new double[k];
        int[] order = new int[k];
        for (int i = 0; i < k; i++) {
            order[i] = i;
        }
        for (int o = 0; o < orders; o++) {
            for (int i = k - 1; i > 0; i--) {
                int j = random.nextInt(i + 1);
                int swap = order[i];
                order[i] = order[j];
                order[j] = swap;
            }
            walk(order, false, value, shares);
            walk(order, true, value, shares);
        }
        for (int i = 0; i < k; i++) {
            shares[i] /= 2.0 * orders;
        }
        return shares;
    }

    private static void walk(int[] order, boolean reverse, LongToDoubleFunction value, double[] shares) {
        long mask = 0;
        double before = value.applyAsDouble(0);
        for (int i = 0; i < order.length; i++) {
            int change = order[reverse ? order.length - 1 - i : i];
            mask |= 1L << change;
            double after = value.applyAsDouble(mask);
            shares[change] += after - before;
            before = after;
        }
    }

    private static double factorial(int n) {
        double f = 1;
        for (int i = 2; i <= n; i++) {
            f *= i;
        }
        return f;
    }
}

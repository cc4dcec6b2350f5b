package headertank.calc.result;

import java.util.Arrays;
import java.util.List;

/**
 * Summary of sampled outcomes of one quantity.
 *
 * @param low 5 % of the samples lie below [unit of the quantity]
 * @param median half of the samples lie below
 * @param high 95 % of the samples lie below
 * @param sorted every sample, the smallest first [unit of the quantity]
 */
public record Distribution(double low, double median, double high, List<Double> sorted) {

    public Distribution {
        sorted = List.copyOf(sorted);
    }

    /** @return how many samples */
    public int samples() {
        return sorted.size();
    }

    /** @return every sample larger by so much [unit of the quantity]; infinite ones stay */
    public Distribution moved(double by) {
        return of(sorted.stream().mapToDouble(v -> v + by).toArray());
    }

    /** @return probability of less than a bound [unit of the quantity]: the share of the samples below it [-] */
    public double probabilityBelow(double bound) {
        return shareBelow(sorted.stream().mapToDouble(v -> v).toArray(), bound);
    }

    /**
     * @param outcomes sampled outcomes; an infinite one counts as beyond every limit and shows in the percentiles
     * @throws IllegalArgumentException when there is none or one is not a number
     */
    public static Distribution of(double[] outcomes) {
        if (outcomes.length == 0) {
            throw new IllegalArgumentException("a distribution needs at least one outcome");
        }
        double[] sorted = outcomes.clone();
        for (double v : sorted) {
            if (Double.isNaN(v)) {
                throw new IllegalArgumentException("an outcome is not a number");
            }
        }
        Arrays.sort(sorted);
        return new Distribution(
                at(sorted, 0.05),
                at(sorted, 0.50),
                at(sorted, 0.95),
                Arrays.stream(sorted).boxed().toList());
    }

    private static double at(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        double weight = place - below;
        if (weight == 0 || sorted[below] == sorted[above]) {
            return sorted[below];
        }
        return sorted[below] * (1 - weight) + sorted[above] * weight;
    }

    /** @return the share of outcomes for which a margin is below zero */
    public static double shareBelow(double[] margins, double bound) {
        return (double) Arrays.stream(margins).filter(m -> m < bound).count() / margins.length;
    }

    /**
     * Sampling error of a probability: one standard deviation of a binomial share with one sample more on either side, so that
     * none of n is not taken for certain (Laplace's rule of succession, from memory). Stratified samples err less.
     *
     * @param probability share of the samples [-]
     * @param n number of samples
     * @return standard error [-]
     */
    public static double standardError(double probability, int n) {
        double p = (probability * n + 1) / (n + 2);
        return Math.sqrt(p * (1 - p) / (n + 2));
    }
}

package headertank.calc.result;

import java.util.Arrays;

/** Every sampled margin of one quantity, so that a policy may ask for the probability of any bound of its own. Immutable. */
public final class SampledMargin {

    private final double[] sorted;

    private SampledMargin(double[] sorted) {
        this.sorted = sorted;
    }

    /**
     * @param outcomes sampled margins [K]; minus infinity counts as beyond every limit
     * @throws IllegalArgumentException when there is none or one is not a number
     */
    public static SampledMargin of(double[] outcomes) {
        Distribution.of(outcomes);
        double[] sorted = outcomes.clone();
        Arrays.sort(sorted);
        return new SampledMargin(sorted);
    }

    /** @return 5, 50 and 95 % of them [K] */
    public Distribution spread() {
        return Distribution.of(sorted);
    }

    /**
     * @param boundK a margin [K]
     * @return probability that the margin is less [-]
     */
    public double probabilityBelow(double boundK) {
        return Distribution.shareBelow(sorted, boundK);
    }
}

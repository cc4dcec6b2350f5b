package headertank.calc.diagnosis;

import headertank.calc.cause.Observation;
import headertank.calc.evidence.SettledReading;
import org.hipparchus.special.Erf;
import org.hipparchus.util.FastMath;

/**
 * How hot a car gets if nobody stops it, and what is then seen. A driver stops where the gauge frightens him: what it showed is the lower
 * of what the car would have reached and of that, each normal about its middle (modelling choice, as are all figures here).
 *
 * @param shownK what its gauge would show [K]
 * @param coolantK coolant out of the engine [K]
 * @param boilingK boiling point at the cap [K]
 */
record Heat(double shownK, double coolantK, double boilingK) {

    private static final double STOPS_ABOVE_LIMIT_K = 10;
    private static final double STOPS_SIGMA_K = 8;
    private static final double HIGH_BELOW_LIMIT_K = 7;
    private static final double RED_ABOVE_LIMIT_K = 4;
    private static final double EYE_K = 4;
    private static final double LAMP_ABOVE_LIMIT_K = 5;
    private static final double LAMP_SIGMA_K = 5;
    private static final double STEAM_BELOW_BOILING_K = 3;
    private static final double STEAM_SIGMA_K = 4;

    /** How often a reading has nothing to do with the car, and the width over which it then lies [-], [K]. */
    private static final double MISREAD = 0.03;

    private static final double MISREAD_WIDTH_K = 60;

    /** How often a person is wrong about a lamp, a needle or steam [-]. */
    private static final double MISTAKEN = 0.04;

    /**
     * @param limitK coolant limit of the car
     * @return probability density of a reading [1/K]
     */
    double densityOf(double readingK, double limitK) {
        double stop = limitK + STOPS_ABOVE_LIMIT_K;
        double sigma = SettledReading.NEEDLE_K;
        double reached = density((readingK - shownK) / sigma) / sigma * below((stop - readingK) / STOPS_SIGMA_K);
        double stopped =
                density((readingK - stop) / STOPS_SIGMA_K) / STOPS_SIGMA_K * below((shownK - readingK) / sigma);
        return (1 - MISREAD) * (reached + stopped) + MISREAD / MISREAD_WIDTH_K;
    }

    /** @return how often it is seen: of needle, lamp and steam [-] */
    double share(Observation seen, double limitK) {
        double exact =
                switch (seen) {
                    case NEEDLE_RED -> above(limitK + RED_ABOVE_LIMIT_K, limitK);
                    case NEEDLE_HIGH ->
                        above(limitK - HIGH_BELOW_LIMIT_K, limitK) - above(limitK + RED_ABOVE_LIMIT_K, limitK);
                    case NEEDLE_NORMAL -> 1 - above(limitK - HIGH_BELOW_LIMIT_K, limitK);
                    case LAMP_ON -> lamp(limitK);
                    case LAMP_OFF -> 1 - lamp(limitK);
                    case STEAM_SEEN -> steam(limitK);
                    case STEAM_NONE -> 1 - steam(limitK);
                    default -> throw new IllegalArgumentException(seen + " does not follow the heat");
                };
        return MISTAKEN + (1 - 2 * MISTAKEN) * exact;
    }

    /** @return how often such a car comes back as one that ran hot, when nobody says what needle or gauge showed [-] */
    double reported(double limitK) {
        return MISTAKEN + (1 - MISTAKEN) * Math.max(steam(limitK), above(limitK - HIGH_BELOW_LIMIT_K, limitK));
    }

    private double above(double k, double limitK) {
        return below((shownK - k) / EYE_K) * below((limitK + STOPS_ABOVE_LIMIT_K - k) / STOPS_SIGMA_K);
    }

    private double lamp(double limitK) {
        return below((stoppedK(limitK) - limitK - LAMP_ABOVE_LIMIT_K) / LAMP_SIGMA_K);
    }

    private double steam(double limitK) {
        return below((stoppedK(limitK) - boilingK + STEAM_BELOW_BOILING_K) / STEAM_SIGMA_K);
    }

    /** The coolant where the driver stops [K]. */
    private double stoppedK(double limitK) {
        return coolantK - Math.max(0, shownK - limitK - STOPS_ABOVE_LIMIT_K);
    }

    private static double density(double x) {
        return FastMath.exp(-0.5 * x * x) / FastMath.sqrt(2 * FastMath.PI);
    }

    private static double below(double x) {
        return 0.5 * Erf.erfc(-x / FastMath.sqrt(2));
    }
}

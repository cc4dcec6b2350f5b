package headertank.calc.uncertainty;

import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.hipparchus.special.Erf;
import org.hipparchus.util.FastMath;

/**
 * Latin hypercube sample of independent standard normal deviates, cut at three standard deviations: every dimension is
 * split into as many strata of equal probability as there are samples, and each stratum is hit once.
 *
 * @see "M. D. McKay, R. J. Beckman, W. J. Conover, A comparison of three methods for selecting values of input variables,
 *     Technometrics 21 (1979) 239-245 (from memory)"
 */
public final class LatinHypercube {

    /** Deviates are cut here, in standard deviations [-]. */
    public static final double CUT = 3.0;

    private static final double LOW = normalCdf(-CUT);
    private static final double HIGH = normalCdf(CUT);

    private LatinHypercube() {}

    /**
     * @param samples number of samples, at least 1
     * @param seeds one for each independent variable; the same seed gives it the same deviates, on every machine and whatever
     *     other variables there are
     * @return deviates [sample][dimension] in standard deviations, within plus and minus {@link #CUT}
     */
    public static double[][] standardNormal(int samples, long... seeds) {
        if (samples < 1) {
            throw new IllegalArgumentException("samples must be at least 1, is " + samples);
        }
        double[][] deviates = new double[samples][seeds.length];
        int[] stratum = new int[samples];
        for (int d = 0; d < seeds.length; d++) {
            RandomGenerator random = new Well19937c(seeds[d]);
            for (int i = 0; i < samples; i++) {
                stratum[i] = i;
            }
            for (int i = samples - 1; i > 0; i--) {
                int j = random.nextInt(i + 1);
                int swap = stratum[i];
                stratum[i] = stratum[j];
                stratum[j] = swap;
            }
            for (int i = 0; i < samples; i++) {
                double u = (stratum[i] + random.nextDouble()) / samples;
                deviates[i][d] = inverseNormal(LOW + u * (HIGH - LOW));
            }
        }
        return deviates;
    }

    private static double normalCdf(double z) {
        return 0.5 * Erf.erfc(-z / FastMath.sqrt(2));
    }

    private static double inverseNormal(double p) {
        return FastMath.sqrt(2) * Erf.erfInv(2 * p - 1);
    }
}

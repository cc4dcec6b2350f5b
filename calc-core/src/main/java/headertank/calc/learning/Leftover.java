package headertank.calc.learning;

import org.hipparchus.util.FastMath;

/**
 * What a right car's model leaves of the readings of one log: an error of the model that lasts and is forgotten with {@link #LASTS_S}
 * (Ornstein and Uhlenbeck's process), and one that passes. So a log of 1,800 rows is some dozens of proofs. Readings are made independent
 * one after the other, each less what those before say of it, over what that leaves open (the innovations of R. E. Kalman, 1960, from
 * memory): the same as by the root of Cholesky of their covariance, in a time that grows with their number and not with its cube.
 *
 * @param size how large the errors are
 */
final class Leftover {

    private static final double LASTS_S = 150;

    /** How large what is left is: standard deviations of what lasts and of what passes, a mean of whole degrees included [K]. */
    record Size(double lastingK, double passingK) {

        /** @return variance of one reading [K2] */
        double varianceK2() {
            return lastingK * lastingK + passingK * passingK;
        }
    }

    private final Size size;
    private final double[] timeS;
    private final double[] kept;
    private final double[] sigmaK;
    private final double[] gain;
    private final double logDeterminant;

    /** @param timeS when each reading was, rising [s] */
    Leftover(Size size, double[] timeS) {
        this.size = size;
        this.timeS = timeS;
        int n = timeS.length;
        this.kept = new double[n];
        this.sigmaK = new double[n];
        this.gain = new double[n];
        double lasting = size.lastingK() * size.lastingK();
        double variance = lasting;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            kept[i] = i == 0 ? 0 : FastMath.exp((timeS[i - 1] - timeS[i]) / LASTS_S);
            variance = kept[i] * kept[i] * variance + (1 - kept[i] * kept[i]) * lasting;
            double open = variance + size.passingK() * size.passingK();
            sigmaK[i] = FastMath.sqrt(open);
            gain[i] = variance / open;
            variance *= 1 - gain[i];
            sum += FastMath.log(open);
        }
        this.logDeterminant = sum;
    }

    Size size() {
        return size;
    }

    /** @return the same readings with errors of another size */
    Leftover of(Size other) {
        return new Leftover(other, timeS);
    }

    int readings() {
        return timeS.length;
    }

    /** @return logarithm of the determinant of the readings' covariance */
    double logDeterminant() {
        return logDeterminant;
    }

    /**
     * Makes readings independent, in place.
     *
     * @param left what is left of readings [K]; becomes independent numbers of unit variance
     * @param from place of the first
     */
    void makeIndependent(double[] left, int from) {
        double expected = 0;
        for (int i = 0; i < timeS.length; i++) {
            expected *= kept[i];
            double off = left[from + i] - expected;
            left[from + i] = off / sigmaK[i];
            expected += gain[i] * off;
        }
    }
}

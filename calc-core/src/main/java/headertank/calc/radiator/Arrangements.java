package headertank.calc.radiator;

import org.hipparchus.util.FastMath;

/**
 * Effectiveness of other arrangements, as bounds and comparisons for {@link CrossFlow}: N = NTU = UA/C_min, C =
 * C_min/C_max, 0..1.
 *
 * @see "W. M. Kays, A. L. London, Compact Heat Exchangers; R. K. Shah, D. P. Sekulic, Fundamentals of Heat Exchanger
 *     Design, 2003; from memory"
 */
public final class Arrangements {

    private Arrangements() {}

    /** @return (1 - e)/(1 - C e), e = exp(-N (1 - C)); N/(1 + N) at C = 1 [-] */
    public static double counterflow(double ntu, double capacityRatio) {
        double d = 1 - capacityRatio;
        if (Math.abs(d) < 1e-9) {
            return ntu / (1 + ntu);
        }
        double gain = -FastMath.expm1(-ntu * d);
        return gain / (d + capacityRatio * gain);
    }

    /** @return (1 - exp(-N (1 + C)))/(1 + C) [-] */
    public static double parallel(double ntu, double capacityRatio) {
        return -FastMath.expm1(-ntu * (1 + capacityRatio)) / (1 + capacityRatio);
    }

    /** @return cross-flow, the stream of the larger capacity mixed: (1 - exp(-C (1 - e^-N)))/C [-] */
    public static double crossflowLargerMixed(double ntu, double capacityRatio) {
        double single = -FastMath.expm1(-ntu);
        return capacityRatio < 1e-12 ? single : -FastMath.expm1(-capacityRatio * single) / capacityRatio;
    }

    /** @return cross-flow, the stream of the smaller capacity mixed: 1 - exp(-(1 - e^-(C N))/C) [-] */
    public static double crossflowSmallerMixed(double ntu, double capacityRatio) {
        double exponent = capacityRatio < 1e-12 ? ntu : -FastMath.expm1(-capacityRatio * ntu) / capacityRatio;
        return -FastMath.expm1(-exponent);
    }

    /** @return cross-flow, both streams mixed: 1/(1/(1 - e^-N) + C/(1 - e^-(C N)) - 1/N) [-] */
    public static double crossflowBothMixed(double ntu, double capacityRatio) {
        double cn = capacityRatio * ntu;
        double second = cn < 1e-9 ? 1 / ntu : -capacityRatio / FastMath.expm1(-cn);
        return 1 / (-1 / FastMath.expm1(-ntu) + second - 1 / ntu);
    }

    /**
     * Passes one behind the other in depth, in counterflow to the air, both streams mixed between them: with e of one
     * pass at N/n and q = ((1 - e C)/(1 - e))^n, (q - 1)/(q - C); n e/(1 + (n - 1) e) at C = 1.
     *
     * @param passes number of passes, at least 1
     */
    public static double counterCrossflow(int passes, double ntu, double capacityRatio) {
        double e = CrossFlow.effectiveness(ntu / passes, capacityRatio);
        if (Math.abs(1 - capacityRatio) < 1e-9) {
            return passes * e / (1 + (passes - 1) * e);
        }
        double q = FastMath.pow((1 - e * capacityRatio) / (1 - e), passes);
        return (q - 1) / (q - capacityRatio);
    }
}

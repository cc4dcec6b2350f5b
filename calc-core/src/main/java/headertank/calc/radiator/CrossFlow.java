package headertank.calc.radiator;

import org.hipparchus.util.FastMath;

/**
 * Effectiveness of a cross-flow core with both streams unmixed: fins keep the air apart, tubes the coolant.
 *
 * <p>Exact series: eps = 1/(C N) sum over n >= 0 of [1 - e^-N sum_{m<=n} N^m/m!] [1 - e^-(C N) sum_{m<=n} (C N)^m/m!], N =
 * NTU = UA/C_min, C = C_min/C_max; C = 0 gives the limit 1 - e^-N. Summed until a term is below 1e-14 and n above N. An NTU
 * above 500 counts as 500. The usual closed approximation is up to 3.8 % off where radiators work and is not used.
 *
 * @see "J. L. Mason 1955, from memory; the values agree with tables after Kays and London and with a numerical solution"
 */
public final class CrossFlow {

    private static final double LARGEST_NTU = 500;

    private CrossFlow() {}

    /**
     * @param ntu number of transfer units, at least 0 [-]
     * @param capacityRatio C_min/C_max, 0..1 [-]
     * @return effectiveness, 0..1 [-]
     */
    public static double effectiveness(double ntu, double capacityRatio) {
        double n = Math.min(ntu, LARGEST_NTU);
        double cn = capacityRatio * n;
        if (!(cn > 1e-12)) {
            return -FastMath.expm1(-n);
        }
        double a;
        double pa;
        if (n < 1) {
            a = -FastMath.expm1(-n);
            pa = 1 - a;
        } else {
            pa = FastMath.exp(-n);
            a = 1 - pa;
        }
        double b;
        double pb;
        if (cn < 1) {
            b = -FastMath.expm1(-cn);
            pb = 1 - b;
        } else {
            pb = FastMath.exp(-cn);
            b = 1 - pb;
        }
        double sum = a * b;
        for (int i = 1; i < 2000; i++) {
            double inverse = 1.0 / i;
            pa *= n * inverse;
            pb *= cn * inverse;
            a -= pa;
            b -= pb;
            if (!(a > 0 && b > 0)) {
                break;
            }
            double term = a * b;
            sum += term;
            if (term < 1e-14 && i > n) {
                break;
            }
        }
        return sum / cn;
    }
}

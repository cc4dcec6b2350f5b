package headertank.calc.radiator;

import org.hipparchus.util.FastMath;

/**
 * Efficiency of a straight fin that is fed from both ends: eta_f = tanh(m l)/(m l), m = sqrt(2 h/(k_f d) (1 + d/T_d)),
 * l = F_l/2 - d; and of the whole finned surface: eta_o = 1 - (A_fin/A)(1 - eta_f).
 *
 * @see "textbook relation, e.g. Shah and Sekulic, Fundamentals of Heat Exchanger Design, 2003, from memory"
 */
public final class FinEfficiency {

    private FinEfficiency() {}

    /** @return tanh(x)/x for x of at least 0, 1 at 0 [-] */
    public static double ofProduct(double x) {
        if (x < 1e-3) {
            return 1 - x * x / 3;
        }
        double e = FastMath.exp(-2 * x);
        return (1 - e) / ((1 + e) * x);
    }

    /** @return efficiency of the surface when a share of it is fin [-] */
    public static double ofSurface(double finShare, double finEfficiency) {
        return 1 - finShare * (1 - finEfficiency);
    }
}

package headertank.calc.quantity;

/**
 * Where to look next inside a bracket: inverse quadratic interpolation where it is safe and bisection where it is not.
 *
 * @see "T. R. Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear function without
 *     using derivatives, Advances in Engineering Software 28 (1997) (from memory)"
 */
public final class BracketStep {

    private BracketStep() {}

    /**
     * @param a newest end of the bracket
     * @param fa function there
     * @param b other end, with a value of the other sign
     * @param fb function there
     * @param c end that was given up last
     * @param fc function there
     * @param least smallest distance from either end, as a share of the bracket [-]
     * @return share of the way from a to b, within {@code least} and {@code 1 - least} [-]
     */
    public static double share(double a, double fa, double b, double fb, double c, double fc, double least) {
        double xi = (a - b) / (c - b);
        double phi = (fa - fb) / (fc - fb);
        double t = 0.5;
        if (phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi) {
            t = fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
        }
        return Math.min(1 - least, Math.max(least, t));
    }
}

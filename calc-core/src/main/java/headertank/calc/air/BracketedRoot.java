package headertank.calc.air;

import headertank.calc.quantity.BracketStep;
import java.util.function.DoubleUnaryOperator;

/**
 * Root of a falling function inside a bracket, by the steps of {@link BracketStep}. It allocates nothing, which the
 * some hundred air balances of one rating notice. At most 200 evaluations; the bracket never opens.
 */
final class BracketedRoot {

    private static final int EVALUATIONS_MAX = 200;

    private BracketedRoot() {}

    /**
     * @param f falling function
     * @param low where f is not below 0
     * @param high where f is not above 0
     * @param relative width of the final bracket over the size of the root [-]
     * @return the root, or the end of the bracket nearest to it when f has one sign throughout
     */
    static double falling(DoubleUnaryOperator f, double low, double high, double relative) {
        double atLow = f.applyAsDouble(low);
        return atLow <= 0 ? low : falling(f, low, atLow, high, f.applyAsDouble(high), relative);
    }

    /**
     * @param atLow f at the lower end
     * @param atHigh f at the upper end
     * @return the root; other parameters as above
     */
    static double falling(
            DoubleUnaryOperator f, double low, double atLow, double high, double atHigh, double relative) {
        double b = low;
        double fb = atLow;
        if (fb <= 0) {
            return b;
        }
        double a = high;
        double fa = atHigh;
        if (fa >= 0) {
            return a;
        }
        double c = b;
        double fc = fb;
        double t = 0.5;
        for (int i = 2; i < EVALUATIONS_MAX; i++) {
            double x = a + t * (b - a);
            double fx = f.applyAsDouble(x);
            if (Math.signum(fx) == Math.signum(fa)) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double best = Math.abs(fa) < Math.abs(fb) ? a : b;
            double width = Math.abs(b - a);
            double share = (relative * Math.abs(best) + 1e-300) / width;
            if (fa == 0 || share > 0.5) {
                return best;
            }
            t = BracketStep.share(a, fa, b, fb, c, fc, share);
        }
        return Math.abs(fa) < Math.abs(fb) ? a : b;
    }
}

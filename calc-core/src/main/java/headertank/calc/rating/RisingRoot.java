package headertank.calc.rating;

import headertank.calc.quantity.BracketStep;
import java.util.function.DoubleUnaryOperator;

/**
 * Root of a rising function from a good first guess: secant steps, lengthened while they gain little, until two values of
 * opposite sign enclose the root; then the steps of {@link BracketStep}. Nothing is computed at the ends of the range unless a step
 * arrives there, so a balance that is nearly a straight line takes four or five values. The bracket never opens again;
 * allocates nothing.
 */
public final class RisingRoot {

    private static final int MOST_EVALUATIONS = 100;

    private RisingRoot() {}

    /**
     * @param f rising function
     * @param low lower end of the range
     * @param high upper end of the range
     * @param guess where to begin, inside the range
     * @param atGuess f there
     * @param slope estimate of the slope, above 0
     * @param valueTolerance a value within this of 0 ends the search
     * @param widthTolerance a bracket narrower than this ends it too
     * @return the root; minus infinity when f is above 0 at the lower end, infinity when it is below 0 at the upper end
     */
    public static double find(
            DoubleUnaryOperator f,
            double low,
            double high,
            double guess,
            double atGuess,
            double slope,
            double valueTolerance,
            double widthTolerance) {
        double before = guess;
        double atBefore = atGuess;
        if (Math.abs(atBefore) <= valueTolerance) {
            return before;
        }
        double step = -atBefore / slope;
        for (int n = 1; n < MOST_EVALUATIONS; n++) {
            double x = Math.max(low, Math.min(high, before + step));
            double fx = x == before ? atBefore : f.applyAsDouble(x);
            if (Math.abs(fx) <= valueTolerance) {
                return x;
            }
            if (fx > 0 != atBefore > 0) {
                return enclosed(f, x, fx, before, atBefore, valueTolerance, widthTolerance);
            }
            if (fx > 0 && x == low) {
                return Double.NEGATIVE_INFINITY;
            }
            if (fx < 0 && x == high) {
                return Double.POSITIVE_INFINITY;
            }
            double secant = -fx * (x - before) / (fx - atBefore);
            boolean onward = secant * step > 0;
            boolean gains = Math.abs(fx) < 0.5 * Math.abs(atBefore);
            double longest = 8 * Math.abs(step);
            step = onward && gains
                    ? secant
                    : Math.signum(step)
                            * Math.min(longest, Math.max(2 * Math.abs(step), onward ? 1.1 * Math.abs(secant) : 0));
            before = x;
            atBefore = fx;
        }
        return before;
    }

    /**
     * @param newest one end of a bracket
     * @param other the other end, with a value of the other sign
     * @return the root between; other parameters as in {@link #find}
     */
    static double enclosed(
            DoubleUnaryOperator f,
            double newest,
            double atNewest,
            double other,
            double atOther,
            double valueTolerance,
            double widthTolerance) {
        double a = newest;
        double fa = atNewest;
        double b = other;
        double fb = atOther;
        double t = secantShare(fa, fb);
        for (int n = 0; n < MOST_EVALUATIONS; n++) {
            double x = a + t * (b - a);
            double fx = f.applyAsDouble(x);
            double c;
            double fc;
            if (fx > 0 == fa > 0) {
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
            if (Math.abs(fa) <= valueTolerance || width <= widthTolerance) {
                return best;
            }
            double share = 0.25 * widthTolerance / width;
            t = BracketStep.share(a, fa, b, fb, c, fc, share);
        }
        return Math.abs(fa) < Math.abs(fb) ? a : b;
    }

    /** First step inside a fresh bracket: the straight line, but not into the outer twentieths. */
    private static double secantShare(double fa, double fb) {
        double share = fa / (fa - fb);
        return Math.max(0.02, Math.min(0.98, share));
    }
}

package headertank.calc.quantity;

import org.hipparchus.util.FastMath;

/**
 * One standard deviation of a stated value, relative or absolute, and a shift of the mean for values that are known to
 * be flattering.
 *
 * @param sigma one standard deviation; a share of the value when {@code relative}, else in the value's SI unit
 * @param relative whether {@code sigma} is a share of the value (log-normal) or absolute (normal)
 * @param meanFactor factor on the value that gives its expected mean, 1 when it is taken as stated [-]
 */
public record Spread(double sigma, boolean relative, double meanFactor) {

    public Spread {
        if (!(sigma >= 0) || Double.isInfinite(sigma)) {
            throw new IllegalArgumentException("sigma must be a finite number of at least 0, is " + sigma);
        }
        if (!(meanFactor > 0) || Double.isInfinite(meanFactor)) {
            throw new IllegalArgumentException("meanFactor must be a finite number above 0, is " + meanFactor);
        }
    }

    /** @param share one standard deviation as a share of the value [-] */
    public static Spread relative(double share) {
        return new Spread(share, true, 1.0);
    }

    /** @param sigma one standard deviation in the value's SI unit */
    public static Spread absolute(double sigma) {
        return new Spread(sigma, false, 1.0);
    }

    /** @return the same spread about a mean that is {@code factor} times the stated value */
    public Spread shifted(double factor) {
        return new Spread(sigma, relative, factor);
    }

    /** @return the same spread, {@code factor} times as wide */
    public Spread widened(double factor) {
        return new Spread(sigma * factor, relative, meanFactor);
    }

    /** @return {@code value} moved by so many standard deviations: by a share for a relative spread, else by an amount */
    public double moved(double value, double sigmas) {
        return relative ? value * FastMath.exp(sigma * sigmas) : value + sigma * sigmas;
    }

    /** @return one standard deviation in the value's SI unit, at the given value */
    public double sigmaAt(double value) {
        return relative ? sigma * Math.abs(value * meanFactor) : sigma;
    }
}

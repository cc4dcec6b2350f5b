package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * Air pressure drop of a core, {@code dp = (a v + b v^2) (1 + rho_i/rho_o)/2}, with v the face velocity at inlet density.
 * The last factor is the growth of friction while the air warms from inlet density rho_i to outlet density rho_o (mean
 * specific volume over inlet specific volume, as in W. M. Kays and A. L. London, <i>Compact Heat Exchangers</i>; from
 * memory). {@link AirPath} applies it: a and b are those of the core at one temperature.
 *
 * @param a viscous part [Pa s/m], 0 to 10 000
 * @param b inertia part [Pa s2/m2], 0 to 1000; a and b not both 0
 */
public record CoreDropCurve(double a, double b) {

    public CoreDropCurve {
        OutOfRangeException.require("a", a, 0, 10_000);
        OutOfRangeException.require("b", b, 0, 1000);
        if (a == 0 && b == 0) {
            throw new OutOfRangeException("b", b, Range.of(Double.MIN_VALUE, 1000));
        }
    }

    /**
     * @param velocityMPerS face velocity v [m/s]; negative is backwards
     * @return pressure drop without heating [Pa], with the sign of the velocity
     */
    public double dropPa(double velocityMPerS) {
        return (a + b * Math.abs(velocityMPerS)) * velocityMPerS;
    }

    /**
     * The inverse of {@link #dropPa}.
     *
     * @param dropPa pressure drop without heating [Pa]
     * @return face velocity [m/s], with the sign of the drop
     */
    public double velocityMPerS(double dropPa) {
        return 2 * dropPa / (a + Math.sqrt(a * a + 4 * b * Math.abs(dropPa)) + Double.MIN_NORMAL);
    }
}

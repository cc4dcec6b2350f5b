package headertank.calc.hood;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import org.hipparchus.util.FastMath;

/**
 * Air along a plate, by its properties at a mean temperature.
 *
 * <p>Forced convection over a length L, averaged: Nu = 0.664 Re^0.5 Pr^(1/3) up to Re 5e5, above (0.037 Re^0.8 - 871)
 * Pr^(1/3); h = Nu k/L, Re = v L/nu. From memory (Incropera and DeWitt, Fundamentals of Heat and Mass Transfer). At rest h
 * is 0 here: natural convection is left out. Re above 1e8: typed error.
 *
 * @param kinematicViscosityM2PerS nu [m2/s]
 * @param conductivityWPerMK k [W/mK]
 * @param prandtl Pr [-]
 */
public record AirFilm(double kinematicViscosityM2PerS, double conductivityWPerMK, double prandtl) {

    private static final double TURBULENT_FROM = 5e5;
    private static final Range REYNOLDS = Range.of(0, 1e8);

    public AirFilm {
        OutOfRangeException.require("kinematicViscosityM2PerS", kinematicViscosityM2PerS, Range.of(1e-6, 1e-3));
        OutOfRangeException.require("conductivityWPerMK", conductivityWPerMK, Range.of(1e-3, 1));
        OutOfRangeException.require("prandtl", prandtl, Range.of(0.1, 10));
    }

    /**
     * @param velocityMPerS v, at least 0 [m/s]
     * @param lengthM L, above 0 [m]
     * @return mean film coefficient [W/m2K]
     */
    public double coefficientWPerM2K(double velocityMPerS, double lengthM) {
        double re = OutOfRangeException.require(
                "plateReynolds", velocityMPerS * lengthM / kinematicViscosityM2PerS, REYNOLDS);
        double flow = re < TURBULENT_FROM ? 0.664 * FastMath.sqrt(re) : 0.037 * FastMath.pow(re, 0.8) - 871;
        return flow * FastMath.cbrt(prandtl) * conductivityWPerMK / lengthM;
    }
}

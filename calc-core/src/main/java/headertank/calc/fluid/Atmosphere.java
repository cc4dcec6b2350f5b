package headertank.calc.fluid;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Range;
import org.hipparchus.util.FastMath;

/**
 * The standard atmosphere below 11 km: T = 288.15 K - 0.0065 K/m H and p = 101325 Pa (T/288.15 K)^(g/(R 0.0065 K/m)),
 * H geopotential altitude, R = 287.05287 J/kgK.
 *
 * @see "ISO 2533:1975, Standard Atmosphere"
 */
public final class Atmosphere {

    /** Altitudes of roads and tracks that are accepted [m]. */
    public static final Range ALTITUDE_M = Range.of(-500.0, 4500.0);

    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double SEA_LEVEL_K = 288.15;
    private static final double EXPONENT = Physics.GRAVITY_M_PER_S2 / (Air.GAS_CONSTANT_J_PER_KG_K * LAPSE_K_PER_M);

    private Atmosphere() {}

    /**
     * @param altitudeM geopotential altitude, -500 to 4500 m
     * @return pressure of the standard atmosphere [Pa]
     * @throws OutOfRangeException outside the range
     */
    public static double pressurePa(double altitudeM) {
        return Physics.STANDARD_PRESSURE_PA * FastMath.pow(temperatureK(altitudeM) / SEA_LEVEL_K, EXPONENT);
    }

    /**
     * @param altitudeM geopotential altitude, -500 to 4500 m
     * @return temperature of the standard atmosphere [K]
     * @throws OutOfRangeException outside the range
     */
    public static double temperatureK(double altitudeM) {
        return SEA_LEVEL_K - LAPSE_K_PER_M * OutOfRangeException.require("altitudeM", altitudeM, ALTITUDE_M);
    }
}

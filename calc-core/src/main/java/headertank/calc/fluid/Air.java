package headertank.calc.fluid;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import org.hipparchus.util.FastMath;

/**
 * Air as an ideal gas. Viscosity mu = 1.458e-6 T^1.5/(T + 110.4) and conductivity k = 2.648151e-3 T^1.5/(T + 245.4 *
 * 10^(-12/T)) are the formulas of the standard atmosphere (ISO 2533:1975; constants from memory); heat capacity cp =
 * 1002.5 + 275e-6 (T - 200 K)^2, from memory. Humidity enters the density only: rho (1 - 0.378 e/p), e the partial
 * pressure of the vapour.
 *
 * <p>Range 223 to 573 K, which holds every ambient of -40 to 60 C and every film of a radiator; beyond,
 * {@link OutOfRangeException}. At 250 to 450 K viscosity and conductivity agree with two other sources within 2 %.
 */
public final class Air {

    /** Specific gas constant of dry air [J/kgK]; ISO 2533:1975. */
    public static final double GAS_CONSTANT_J_PER_KG_K = 287.05287;

    /** Temperatures that the property functions take [K]. */
    public static final Range TEMPERATURE_K = Range.of(223.15, 573.15);

    /** Ambient temperatures that a rating takes, -40 to 60 C [K]. */
    public static final Range AMBIENT_K = Range.of(233.15, 333.15);

    /** Pressures that the density takes [Pa]. */
    public static final Range PRESSURE_PA = Range.of(40_000.0, 130_000.0);

    private static final Range HUMIDITY = Range.of(0.0, 1.0);
    private static final double LN_10 = 2.302585092994046;

    private Air() {}

    /**
     * Density of moist air. Below 0 C the vapour pressure over supercooled water is used, an extrapolation of the
     * saturation equation that changes the density by less than 0.1 %.
     *
     * @param pressurePa static pressure, 40 to 130 kPa
     * @param temperatureK temperature, 223 to 573 K
     * @param relativeHumidity relative humidity at this temperature, 0 to 1 [-]
     * @return density [kg/m3]
     * @throws OutOfRangeException outside these ranges
     */
    public static double densityKgPerM3(double pressurePa, double temperatureK, double relativeHumidity) {
        double t = checked(temperatureK);
        double p = OutOfRangeException.require("pressurePa", pressurePa, PRESSURE_PA);
        double phi = OutOfRangeException.require("relativeHumidity", relativeHumidity, HUMIDITY);
        double dry = p / (GAS_CONSTANT_J_PER_KG_K * t);
        return phi == 0
                ? dry
                : dry * (1 - 0.378 * Math.min(1.0, phi * WaterProperties.saturationPressureUnchecked(t) / p));
    }

    /**
     * @param temperatureK temperature, 223 to 573 K
     * @return specific heat capacity of dry air at constant pressure [J/kgK]
     */
    public static double heatCapacityJPerKgK(double temperatureK) {
        double d = checked(temperatureK) - 200.0;
        return 1002.5 + 275e-6 * d * d;
    }

    /**
     * @param temperatureK temperature, 223 to 573 K
     * @return dynamic viscosity [Pa s]
     */
    public static double viscosityPaS(double temperatureK) {
        double t = checked(temperatureK);
        return 1.458e-6 * t * FastMath.sqrt(t) / (t + 110.4);
    }

    /**
     * @param temperatureK temperature, 223 to 573 K
     * @return thermal conductivity [W/mK]
     */
    public static double conductivityWPerMK(double temperatureK) {
        double t = checked(temperatureK);
        return 2.648151e-3 * t * FastMath.sqrt(t) / (t + 245.4 * FastMath.exp(-12.0 / t * LN_10));
    }

    private static double checked(double temperatureK) {
        return OutOfRangeException.require("airTemperatureK", temperatureK, TEMPERATURE_K);
    }
}

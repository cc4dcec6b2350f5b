package headertank.calc.fluid;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import org.hipparchus.util.FastMath;

/**
 * Water: saturation line and properties of the liquid.
 *
 * <p>Saturation: equations 30 and 31 of IAPWS R7-97(2012), Revised Release on the IAPWS Industrial Formulation 1997,
 * with the ten coefficients of its table 34; valid over 273.15 to 647.096 K.
 *
 * <p>Liquid density, heat capacity, logarithm of the viscosity and conductivity: polynomials in z = (t - 75)/75, t in
 * degrees C, which we fitted over 1 to 150 C to values of that formulation, of IAPWS R12-08 (viscosity) and of R15-11
 * (conductivity), at the larger of 0.2 MPa and 1.02 times the saturation pressure. Largest fit error: density 1.5e-4,
 * heat capacity 5.5e-4, viscosity 2.3e-3, conductivity 1.1e-3. The formulations themselves are good to about 1 %
 * (viscosity) and 1.5 % (conductivity). Pressure plays no part: between 0.1 and 0.3 MPa it changes the density by
 * 1e-4.
 *
 * <p>{@link WaterCoolant} is the liquid; it clamps to these ranges and notes it.
 */
public final class WaterProperties {

    /** Temperatures of the saturation line [K]. */
    public static final Range SATURATION_K = Range.of(273.15, 647.096);

    /** Pressures of the saturation line, from the triple point to 22.064 MPa [Pa]. */
    public static final Range SATURATION_PA = Range.of(611.213, 22.064e6);

    /** Temperatures that the fits of the liquid cover [K]. */
    public static final Range LIQUID_K = Range.of(274.15, 423.15);

    static final double[] DENSITY = {974.89153, -45.036773, -14.571849, 3.461598, -1.8051746};
    static final double[] HEAT_CAPACITY = {4191.7204, 54.379635, 51.322523, 10.528139, 19.432998, -18.037807};
    static final double[] LN_VISCOSITY = {-7.8815171, -0.98180442, 0.33054705, -0.11222353, 0.082364256, -0.046755631};
    static final double[] CONDUCTIVITY = {0.66358364, 0.053492075, -0.040710914, 0.0086075099, -0.004228376};

    private static final double N1 = 0.11670521452767e4;
    private static final double N2 = -0.72421316703206e6;
    private static final double N3 = -0.17073846940092e2;
    private static final double N4 = 0.12020824702470e5;
    private static final double N5 = -0.32325550322333e7;
    private static final double N6 = 0.14915108613530e2;
    private static final double N7 = -0.48232657361591e4;
    private static final double N8 = 0.40511340542057e6;
    private static final double N9 = -0.23855557567849;
    private static final double N10 = 0.65017534844798e3;

    private WaterProperties() {}

    /** Equation 30 without a range check; goes on smoothly some 40 K below 0 C (supercooled water). */
    static double saturationPressureUnchecked(double temperatureK) {
        double theta = temperatureK + N9 / (temperatureK - N10);
        double a = (theta + N1) * theta + N2;
        double b = (N3 * theta + N4) * theta + N5;
        double c = (N6 * theta + N7) * theta + N8;
        double root = 2 * c / (-b + FastMath.sqrt(b * b - 4 * a * c));
        double square = root * root;
        return square * square * 1e6;
    }

    /**
     * Saturation temperature; IF97 equation 31.
     *
     * @param pressurePa absolute pressure, 611.213 Pa to 22.064 MPa
     * @return saturation temperature [K]
     */
    public static double saturationTemperatureK(double pressurePa) {
        double p = OutOfRangeException.require("pressurePa", pressurePa, SATURATION_PA) / 1e6;
        double beta2 = FastMath.sqrt(p);
        double beta = FastMath.sqrt(beta2);
        double e = beta2 + N3 * beta + N6;
        double f = N1 * beta2 + N4 * beta + N7;
        double g = N2 * beta2 + N5 * beta + N8;
        double d = 2 * g / (-f - FastMath.sqrt(f * f - 4 * e * g));
        double s = N10 + d;
        return (s - FastMath.sqrt(s * s - 4 * (N9 + N10 * d))) / 2;
    }
}

package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;

/**
 * Factors on what is uncertain in the air path, for sampling. One means as specified.
 *
 * @param lossCoefficients factor on the inlet, exit and tilt losses [-], 0.05 to 20
 * @param ramPressure factor on the dynamic pressure of the moving car [-], 0 to 2
 * @param sideslip factor on {@code cos^2} of the sideslip angle, in full from 25 degrees on [-], 0 to 2; sigma 0.15, a
 *     guess
 */
public record AirFactors(double lossCoefficients, double ramPressure, double sideslip) {

    /** All factors one. */
    public static final AirFactors NOMINAL = new AirFactors(1, 1, 1);

    public AirFactors {
        OutOfRangeException.require("lossCoefficients", lossCoefficients, 0.05, 20);
        OutOfRangeException.require("ramPressure", ramPressure, 0, 2);
        OutOfRangeException.require("sideslip", sideslip, 0, 2);
    }
}

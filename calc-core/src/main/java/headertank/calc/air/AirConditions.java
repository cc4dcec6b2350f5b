package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * The air around and inside the car at one operating point. Density is {@code factor p/(287.05 T)}.
 *
 * @param speedMPerS car speed V [m/s], 0 to 130
 * @param yawRad sideslip angle beta [rad], -1.6 to 1.6; the inlet feels {@code Cp_in cos^2 beta}, a guess
 * @param pressurePa ambient pressure [Pa], 40 to 115 kPa
 * @param ambientK ambient temperature, of the ram air [K], 223 to 343
 * @param airInK air entering the core, after preheat and recirculation [K], 223 to 500
 * @param airOutK air leaving the core [K], 223 to 600
 * @param densityFactor moist over dry density at equal pressure and temperature [-], 0.9 to 1
 */
public record AirConditions(
        double speedMPerS,
        double yawRad,
        double pressurePa,
        double ambientK,
        double airInK,
        double airOutK,
        double densityFactor) {

    private static final double GAS_CONSTANT_J_PER_KG_K = 287.05;
    private static final Range SPEED = Range.of(0, 130);
    private static final Range YAW = Range.of(-1.6, 1.6);
    private static final Range PRESSURE = Range.of(40e3, 115e3);
    private static final Range AMBIENT = Range.of(223, 343);
    private static final Range INLET = Range.of(223, 500);
    private static final Range OUTLET = Range.of(223, 600);
    private static final Range MOIST = Range.of(0.9, 1);

    public AirConditions {
        OutOfRangeException.require("speedMPerS", speedMPerS, SPEED);
        OutOfRangeException.require("yawRad", yawRad, YAW);
        OutOfRangeException.require("pressurePa", pressurePa, PRESSURE);
        OutOfRangeException.require("ambientK", ambientK, AMBIENT);
        OutOfRangeException.require("airInK", airInK, INLET);
        OutOfRangeException.require("airOutK", airOutK, OUTLET);
        OutOfRangeException.require("densityFactor", densityFactor, MOIST);
    }

    /** @return density at a temperature in kelvin [kg/m3] */
    double densityKgPerM3(double temperatureK) {
        return densityFactor * pressurePa / (GAS_CONSTANT_J_PER_KG_K * temperatureK);
    }
}

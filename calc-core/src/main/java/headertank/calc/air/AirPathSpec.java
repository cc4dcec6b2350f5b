package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * The way of the air through one radiator. Values outside the ranges given here are refused with {@link
 * OutOfRangeException}. Pressure and loss coefficients of real cars are guessed unless a pressure tap or wool tufts said
 * otherwise: sigma 0.08 on the inlet's, 0.10 on the exit's pressure coefficient, 25 % on the losses, 20 % on the exit area.
 *
 * @param faceAreaM2 core face A_f [m2], 0.005 to 3
 * @param inletAreaM2 narrowest inlet opening A_in [m2], 0.001 to 5
 * @param exitAreaM2 narrowest opening behind the core A_ex [m2], 0.001 to 5
 * @param inletPressureCoefficient Cp_in, pressure before the inlet over dynamic pressure [-], -1 to 1
 * @param exitPressureCoefficient Cp_ex, the same at the exit [-], -1.5 to 0.8; near the windscreen's foot positive
 * @param inletLoss K_in on the sealed share of the inlet area [-], 0 to 20
 * @param exitLoss K_ex on the exit area [-], 0 to 20
 * @param sealing share of the inlet area whose air reaches the core [-], 0.1 to 1
 * @param tiltRad angle between core and upright [rad], 0 to 1.3; costs {@code sin^2(tilt)} dynamic pressures of the face
 *     velocity (derived, factor 2 unsure)
 * @param coveredShare share of the face under the shroud [-], 0.05 to 1; without fans it plays no part
 * @param flaps whether flaps keep air from flowing back through the bare share
 * @param recirculationAtRest share r_0 of hot air drawn in again at rest [-], 0 to 0.7; 0.08 with sealed sides, 0.20 open
 *     (guessed, 50 %)
 */
public record AirPathSpec(
        double faceAreaM2,
        double inletAreaM2,
        double exitAreaM2,
        double inletPressureCoefficient,
        double exitPressureCoefficient,
        double inletLoss,
        double exitLoss,
        double sealing,
        double tiltRad,
        double coveredShare,
        boolean flaps,
        double recirculationAtRest) {

    public AirPathSpec {
        OutOfRangeException.require("faceAreaM2", faceAreaM2, Range.of(0.005, 3));
        OutOfRangeException.require("inletAreaM2", inletAreaM2, Range.of(0.001, 5));
        OutOfRangeException.require("exitAreaM2", exitAreaM2, Range.of(0.001, 5));
        OutOfRangeException.require("inletPressureCoefficient", inletPressureCoefficient, Range.of(-1, 1));
        OutOfRangeException.require("exitPressureCoefficient", exitPressureCoefficient, Range.of(-1.5, 0.8));
        OutOfRangeException.require("inletLoss", inletLoss, Range.of(0, 20));
        OutOfRangeException.require("exitLoss", exitLoss, Range.of(0, 20));
        OutOfRangeException.require("sealing", sealing, Range.of(0.1, 1));
        OutOfRangeException.require("tiltRad", tiltRad, Range.of(0, 1.3));
        OutOfRangeException.require("coveredShare", coveredShare, Range.of(0.05, 1));
        OutOfRangeException.require("recirculationAtRest", recirculationAtRest, Range.of(0, 0.7));
    }
}

package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * A number of like fans at their reference speed (13 V for an electric fan), in air of 1.2 kg/m3. Values outside the
 * ranges given here are refused with {@link OutOfRangeException}.
 *
 * @param count how many, 1 to 8
 * @param freeFlowM3PerS flow of one fan against no pressure, q0 [m3/s], 0.02 to 8
 * @param shutOffPa pressure rise against a closed duct, p0 [Pa], 10 to 5000
 * @param diameterM diameter over the blades [m], 0.05 to 1.2
 * @param hubDiameterM diameter of the hub [m], 0 to 0.8 of the blades' diameter
 * @param shape s in {@code p/p0 = 1 - s u - (1 - s) u^2}, u = q/q0 [-], 0.2 to 0.9; 0.5 when unknown (modelling choice)
 * @param pushing whether it stands before the core and sees cold air; its speed counts 0.75 (common practice, no source:
 *     a pusher moves 20 to 30 % less)
 * @param windmillingLoss loss coefficient on the blade annulus without power [-], 0 to 30; 5 when unknown, guessed, 40 %
 */
public record FanSpec(
        int count,
        double freeFlowM3PerS,
        double shutOffPa,
        double diameterM,
        double hubDiameterM,
        double shape,
        boolean pushing,
        double windmillingLoss) {

    /** Hub over blade diameter when nobody measured it [-]; guessed. */
    public static final double USUAL_HUB_SHARE = 0.35;

    /** Shape of the curve when nobody measured it [-]; modelling choice. */
    public static final double USUAL_SHAPE = 0.5;

    /** Loss coefficient of unpowered blades when nobody measured it [-]; guessed, 40 %. */
    public static final double USUAL_WINDMILLING_LOSS = 5;

    /** Loss coefficients of unpowered blades that are accepted [-]. */
    public static final Range WINDMILLING_LOSS = Range.of(0, 30);

    public FanSpec {
        OutOfRangeException.require("count", count, Range.of(1, 8));
        OutOfRangeException.require("freeFlowM3PerS", freeFlowM3PerS, Range.of(0.02, 8));
        OutOfRangeException.require("shutOffPa", shutOffPa, Range.of(10, 5000));
        OutOfRangeException.require("diameterM", diameterM, Range.of(0.05, 1.2));
        OutOfRangeException.require("hubDiameterM", hubDiameterM, Range.of(0, 0.8 * diameterM));
        OutOfRangeException.require("shape", shape, Range.of(0.2, 0.9));
        OutOfRangeException.require("windmillingLoss", windmillingLoss, WINDMILLING_LOSS);
    }

    /** Pulling fans with the usual shape and losses. */
    public static FanSpec of(
            int count, double freeFlowM3PerS, double shutOffPa, double diameterM, double hubDiameterM) {
        return new FanSpec(
                count, freeFlowM3PerS, shutOffPa, diameterM, hubDiameterM, USUAL_SHAPE, false, USUAL_WINDMILLING_LOSS);
    }

    /** @return area between hub and blade tips of one fan [m2] */
    public double annulusM2() {
        return annulusM2(diameterM, hubDiameterM);
    }

    /** @return area between a hub and the tips of its blades [m2], of diameters [m] */
    public static double annulusM2(double diameterM, double hubDiameterM) {
        return Math.PI / 4 * (diameterM * diameterM - hubDiameterM * hubDiameterM);
    }
}

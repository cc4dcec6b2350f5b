package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * A fan on the engine behind a viscous clutch. Its speed is {@code SR ratio n}, n engine speed, ratio the pulleys', SR the
 * clutch's speed ratio: {@code slipCold} until the air that leaves the core reaches {@code engageK}, rising linearly to
 * {@code slipHot} at {@code fullK}. It feels air, not coolant, so a gap to the core delays it. A usual clutch: 0.25, 0.80 and 10
 * K between them (modelling choices). A rigid fan has slipCold = slipHot = 1.
 *
 * @param fan the blades at {@code referenceSpeedPerS}
 * @param referenceSpeedPerS blade speed of the fan's figures [rev/s], 1 to 200
 * @param pulleyRatio pulley speed over engine speed [-], 0.3 to 3
 * @param slipCold speed ratio when cold [-], 0 to {@code slipHot}
 * @param slipHot speed ratio when engaged [-], to 1
 * @param engageK air temperature behind the core at which it begins to engage [K], 273 to 420
 * @param fullK the same when fully engaged [K], not below {@code engageK}, to 450
 * @param speedMaxPerS blade speed that the clutch does not exceed [rev/s], 1 to 300
 */
public record ClutchFan(
        FanSpec fan,
        double referenceSpeedPerS,
        double pulleyRatio,
        double slipCold,
        double slipHot,
        double engageK,
        double fullK,
        double speedMaxPerS) {

    /** Blade speed at which the flow of an engine-driven fan is usually stated [rev/s]: 2500 rev/min; common practice, no source. */
    public static final double USUAL_REFERENCE_PER_S = 2500.0 / 60;

    /** Speed ratio of an engaged viscous clutch [-]; modelling choice. */
    public static final double ENGAGED_SLIP = 0.80;

    /** Speed ratio of a viscous clutch that is cold [-]; modelling choice. */
    public static final double FREE_SLIP = 0.25;

    /** Air behind the core at which a viscous clutch begins to engage [K]; guessed. */
    public static final double USUAL_ENGAGE_K = 338.15;

    /** Rise of that air over which it engages [K]; modelling choice. */
    public static final double ENGAGING_OVER_K = 10;

    /** Blade speed that a viscous clutch does not exceed [rev/s]: 3600 rev/min; guessed. */
    public static final double USUAL_FASTEST_PER_S = 60;

    /** Pulley ratios that are accepted [-]. */
    public static final Range PULLEY_RATIO = Range.of(0.3, 3);

    public ClutchFan {
        OutOfRangeException.require("referenceSpeedPerS", referenceSpeedPerS, 1, 200);
        OutOfRangeException.require("pulleyRatio", pulleyRatio, PULLEY_RATIO);
        OutOfRangeException.require("slipHot", slipHot, 0, 1);
        OutOfRangeException.require("slipCold", slipCold, 0, slipHot);
        OutOfRangeException.require("engageK", engageK, 273, 420);
        OutOfRangeException.require("fullK", fullK, engageK, 450);
        OutOfRangeException.require("speedMaxPerS", speedMaxPerS, 1, 300);
    }

    /**
     * A viscous clutch with the usual slip, engaging at the usual air temperature and at most at its usual speed.
     *
     * @param fan the blades at {@link #USUAL_REFERENCE_PER_S}
     * @param pulleyRatio pulley speed over engine speed [-], 0.3 to 3
     */
    public static ClutchFan viscous(FanSpec fan, double pulleyRatio) {
        return new ClutchFan(
                fan,
                USUAL_REFERENCE_PER_S,
                pulleyRatio,
                FREE_SLIP,
                ENGAGED_SLIP,
                USUAL_ENGAGE_K,
                USUAL_ENGAGE_K + ENGAGING_OVER_K,
                USUAL_FASTEST_PER_S);
    }

    /**
     * @param airOffCoreK temperature of the air at the clutch [K]
     * @return SR, blade speed over pulley speed [-]
     */
    public double slip(double airOffCoreK) {
        if (airOffCoreK >= fullK) {
            return slipHot;
        }
        if (!(airOffCoreK > engageK)) {
            return slipCold;
        }
        return slipCold + (slipHot - slipCold) * (airOffCoreK - engageK) / (fullK - engageK);
    }

    /**
     * @param engineSpeedPerS crankshaft speed [rev/s]
     * @param slip SR, blade speed over pulley speed [-]
     * @return blade speed over reference speed [-], for {@link AirPath#solve}
     */
    public double speedFactorAtSlip(double engineSpeedPerS, double slip) {
        return Math.min(speedMaxPerS, engineSpeedPerS * pulleyRatio * slip) / referenceSpeedPerS;
    }
}

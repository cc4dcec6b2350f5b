package headertank.calc.radiator;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * Multipliers on the three correlations, for uncertainty and for fits to measurements.
 *
 * @param airSide on the air-side coefficient [-]
 * @param airFriction on the air-side friction factor [-]
 * @param tubeSide on the tube-side coefficient [-]
 */
public record RadiatorFactors(double airSide, double airFriction, double tubeSide) {

    private static final Range ALLOWED = Range.of(0.01, 100);

    /** The correlations as published. */
    public static final RadiatorFactors NOMINAL = new RadiatorFactors(1, 1, 1);

    public RadiatorFactors {
        OutOfRangeException.require("airSideFactor", airSide, ALLOWED);
        OutOfRangeException.require("airFrictionFactor", airFriction, ALLOWED);
        OutOfRangeException.require("tubeSideFactor", tubeSide, ALLOWED);
    }
}

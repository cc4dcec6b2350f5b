package headertank.calc.radiator;

import headertank.calc.choice.TankPlacement;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * A radiator: its core and how it is plumbed.
 *
 * @param geometry the core
 * @param tanks where the tanks sit
 * @param passes times that the coolant crosses the face, 1..3
 * @param blockedFaceShare share of the face that dirt, tape or bent fins close to the air, 0..0.95 [-]
 * @param wholeTubes whether the pitch of the tubes was measured on this core, so that they are counted whole
 */
public record RadiatorSpec(
        CoreGeometry geometry, TankPlacement tanks, int passes, double blockedFaceShare, boolean wholeTubes) {

    /** Passes side by side. */
    public static final Range PASSES = Range.of(1, 3);

    /** Share of the face that may be blocked [-]. */
    public static final Range BLOCKED = Range.of(0.0, 0.95);

    public RadiatorSpec {
        if (geometry == null || tanks == null) {
            throw new IllegalArgumentException("a radiator needs its core and its tanks");
        }
        OutOfRangeException.require("radiatorPasses", passes, PASSES);
        OutOfRangeException.require("blockedFaceShare", blockedFaceShare, BLOCKED);
    }
}

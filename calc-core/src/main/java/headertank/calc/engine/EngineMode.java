package headertank.calc.engine;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * One part of a duty, for the mean of {@link EngineHeat#meanOver}. Heat is concave in load, so heat at the mean load
 * overstates the mean heat; modes do not.
 *
 * @param timeShare share of the time [-], 0 to 1; shares are divided by their sum
 * @param powerShare brake power over <i>rated</i> power [-], 0 to 1.5; 0 means overrun with the fuel cut
 * @param speedShare engine speed over rated speed [-], 0 to 1.3
 */
public record EngineMode(double timeShare, double powerShare, double speedShare) {

    public EngineMode {
        OutOfRangeException.require("timeShare", timeShare, Range.of(0, 1));
        OutOfRangeException.require("powerShare", powerShare, Range.of(0, 1.5));
        OutOfRangeException.require("speedShare", speedShare, Range.of(0, 1.3));
    }
}

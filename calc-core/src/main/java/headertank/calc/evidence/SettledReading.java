package headertank.calc.evidence;

import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.OutOfRangeException;
import java.util.Optional;

/**
 * What the gauge of the car showed once it stood still: "97 on the third lap, 31 outside".
 *
 * @param point what the car did
 * @param ambientK air around the car that day, 233 to 328 [K]
 * @param shownK what the gauge showed, 273 to 433 [K]
 * @param sigmaK one standard deviation of the reading, 0.1 to 20; the needle of a gauge 3, a display 1 (modelling choices) [K]
 * @param elsewhere where the sensor sits when it is not that of the car's gauge
 */
public record SettledReading(
        OperatingPoint point, double ambientK, double shownK, double sigmaK, Optional<SensorPlacement> elsewhere)
        implements Evidence {

    /** One standard deviation of a needle that a driver glances at [K]; modelling choice. */
    public static final double NEEDLE_K = 3;

    /** One standard deviation of a display with digits [K]; modelling choice. */
    public static final double DISPLAY_K = 1;

    public SettledReading {
        OutOfRangeException.require("reading.ambientK", ambientK, 233.15, 328.15);
        OutOfRangeException.require("reading.shownK", shownK, 273.15, 433.15);
        OutOfRangeException.require("reading.sigmaK", sigmaK, 0.1, 20);
        if (point.engineOff()) {
            throw new IllegalArgumentException("a reading settles only with the engine on, not at " + point.id());
        }
    }
}

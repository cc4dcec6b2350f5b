package headertank.calc.evidence;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.result.IdleExpectation.Figure;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a technician read off the car when it was started cold and left idling in the workshop.
 *
 * @param ambientK air in the workshop [K]
 * @param readings by figure, in its SI unit; at least one
 */
public record WorkshopReadings(double ambientK, Map<Figure, Double> readings) implements Evidence {

    public WorkshopReadings {
        OutOfRangeException.require("workshop.ambientK", ambientK, 253.15, 328.15);
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("workshop readings need at least one");
        }
        readings.forEach((f, v) -> OutOfRangeException.require("workshop." + f, v, 0, 1e5));
        Map<Figure, Double> copy = new EnumMap<>(Figure.class);
        copy.putAll(readings);
        readings = Collections.unmodifiableMap(copy);
    }
}

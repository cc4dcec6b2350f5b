package headertank.app.handover.item;

import headertank.calc.result.IdleExpectation.Band;
import headertank.calc.result.IdleExpectation.Figure;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The workshop on one day.
 *
 * @param ambientK its air [K]
 * @param bands what the models expect there, in SI
 */
public record WorkshopDay(long id, double ambientK, Map<Figure, Band> bands, String authorName, Instant setAt) {

    public WorkshopDay {
        Map<Figure, Band> copy = new EnumMap<>(Figure.class);
        copy.putAll(bands);
        bands = Collections.unmodifiableMap(copy);
    }
}

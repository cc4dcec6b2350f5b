package headertank.app.handover.item;

import java.time.Instant;
import java.util.Optional;

/**
 * What somebody entered for an item.
 *
 * @param valueSi the reading in SI
 * @param typed the reading as typed, empty without one
 */
public record Measurement(
        long id,
        String item,
        ItemOutcome outcome,
        Optional<Double> valueSi,
        String typed,
        String note,
        String authorName,
        Instant storedAt) {}

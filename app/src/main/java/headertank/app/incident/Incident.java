package headertank.app.incident;

import headertank.calc.choice.SensorPlacement;
import java.time.Instant;
import java.util.Optional;

/**
 * A car ran hot.
 *
 * @param revisionId what was on the car that day
 * @param comparedCheckId the last good check before it, as it was found when it was reported
 * @param duty id of a duty, empty when none fits
 * @param doing in words
 * @param ambientK air of that day [K]
 * @param readingK what the gauge showed [K]
 * @param place where that gauge's sensor sits
 */
public record Incident(
        long id,
        long carId,
        long revisionId,
        int revisionNumber,
        Optional<Long> comparedCheckId,
        Instant occurredAt,
        String duty,
        String doing,
        Optional<Double> ambientK,
        double readingK,
        SensorPlacement place,
        String note,
        String reporterName,
        Instant reportedAt) {}

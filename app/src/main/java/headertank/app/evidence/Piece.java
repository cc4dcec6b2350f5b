package headertank.app.evidence;

import java.time.Instant;
import java.util.Optional;

/**
 * A piece of evidence of a car, as it stands now. What it says never changes; whether it is used is switched by further rows.
 *
 * @param logId the log that it is
 * @param said what it says, canonical JSON
 * @param sha256 of that, in hexadecimal digits
 * @param used whether it is learned from
 * @param revisionId revision that describes the car as it was when this was seen
 * @param switched who said last whether it is used; nothing when nobody has since it came
 */
public record Piece(
        long id,
        long carId,
        PieceKind kind,
        Optional<Long> logId,
        String said,
        String sha256,
        boolean used,
        long revisionId,
        int revisionNumber,
        String author,
        Instant addedAt,
        Optional<Switched> switched) {

    /** A word on whether a piece is used. */
    public record Switched(String reason, String author, Instant at) {}
}

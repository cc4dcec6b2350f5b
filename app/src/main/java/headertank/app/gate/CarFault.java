package headertank.app.gate;

import java.time.Instant;
import java.util.Optional;

/**
 * Something that was found wrong with a car, and what became of it.
 *
 * @param checkId on whose check list it was found
 * @param revisionNumber revision of that check
 * @param item of the check list, empty when the whole car was sent back
 * @param note in words, empty for a reading that needs none
 * @param reading what was read, for a reading
 * @param older whether the car has a newer revision than the one it was found on
 */
public record CarFault(
        long id,
        long checkId,
        int revisionNumber,
        FaultKind kind,
        String item,
        String note,
        Optional<Reading> reading,
        boolean older,
        String authorName,
        Instant openedAt,
        Optional<Clearing> clearing) {

    /** A reading and what it was held against, in SI; {@code high} is infinite when there is no upper bound. */
    public record Reading(double value, double expected, double low, double high) {}

    /** How a fault was cleared. */
    public enum How {
        /** A later reading lies within what is expected. */
        READING,
        /** A newer revision puts it right. */
        REVISION,
        /** For a reason, in words. */
        REASON
    }

    /** @param revisionNumber the revision that put it right, 0 when it was none */
    public record Clearing(How how, int revisionNumber, String reason, String authorName, Instant clearedAt) {}

    public boolean isOpen() {
        return clearing.isEmpty();
    }
}

package headertank.app.carspec;

import java.time.Instant;

/**
 * A saved spec. It never changes.
 *
 * @param number 1 for a car's first
 * @param parentNumber the revision it was made from; null for the first
 * @param specText the spec in its stored form
 * @param reason why it was made
 */
public record Revision(
        long id,
        long carId,
        int number,
        Integer parentNumber,
        Spec spec,
        String specText,
        long authorId,
        String authorName,
        String reason,
        Instant savedAt) {}

package headertank.app.handover.photo;

import java.time.Instant;

/** A picture without its bytes; width and height in pixels. */
public record PhotoLine(
        long id, String item, String caption, int width, int height, String authorName, Instant storedAt) {}

package headertank.app.evidence;

import java.time.Instant;

/**
 * What was worked out of a car.
 *
 * @param text canonical JSON
 * @param sha256 of that, in hexadecimal digits
 */
public record Answer(long id, String text, String sha256, Instant at) {}

package headertank.app.incident.cause;

import java.time.Instant;

/**
 * An answer, with who gave it.
 *
 * @param question {@link #DOING}, or name of an {@link headertank.calc.cause.Inquiry}
 * @param answer id of an operating point, or name of an {@link headertank.calc.cause.Observation}; empty when it is taken back
 */
public record IncidentAnswer(String question, String answer, String authorName, Instant answeredAt) {

    /** Asks what the car was doing. */
    public static final String DOING = "DOING";
}

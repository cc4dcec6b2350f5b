package headertank.app.incident.cause;

import java.util.UUID;

/**
 * One tap.
 *
 * @param key of the form; null from a program or a page that has none
 * @param question as in {@link IncidentAnswer}
 * @param answer likewise; empty to take it back
 */
record IncidentAnswerForm(UUID key, String question, String answer) {}

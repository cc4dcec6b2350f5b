package headertank.app.incident.cause;

import java.util.UUID;

/**
 * One tap.
 *
 * @param question as in {@link IncidentAnswer}
 * @param answer likewise; empty to take it back
 */
record IncidentAnswerForm(UUID key, String question, String answer) {

    IncidentAnswerForm {
        question = question == null ? "" : question;
        answer = answer == null ? "" : answer;
    }
}

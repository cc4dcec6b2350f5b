package headertank.app.incident.cause;

import java.util.List;
import java.util.Optional;

/**
 * The causes of a report, in the reader's words.
 *
 * @param answers the likeliest few
 * @param further the causes after those
 * @param settled whether the first answer needs no further test
 * @param next what to test next, the best first
 * @param asked what can be said in a tap, with what was said
 * @param given all that was said, newest first
 */
record CauseView(
        List<AnswerLine> answers,
        List<CauseLine> further,
        boolean settled,
        List<TestLine> next,
        List<AskedLine> asked,
        List<String> given) {

    /** One cause, or several that cannot be told apart. */
    record AnswerLine(List<CauseLine> causes, String likely) {

        public boolean isGroup() {
            return causes.size() > 1;
        }
    }

    /**
     * @param likely how likely it is now
     * @param before how likely it was before anything was seen
     * @param amount how bad it would have to be
     * @param pro what speaks for it
     * @param contra what speaks against it
     */
    record CauseLine(
            String id,
            String name,
            String likely,
            String before,
            Optional<String> amount,
            List<String> pro,
            List<String> contra) {}

    /** A test, with an outcome for each tap. */
    record TestLine(
            String question, String name, String how, String tools, String caution, List<OutcomeLine> outcomes) {}

    /** @param means what it would mean */
    record OutcomeLine(String answer, String label, String means) {}

    /** A question of the desk. */
    record AskedLine(String question, String label, List<Option> options, boolean answered) {}

    record Option(String answer, String label, boolean chosen) {}
}

package headertank.app.handover;

import headertank.app.gate.Step;
import headertank.app.handover.item.ChecklistLine;
import java.util.ArrayList;
import java.util.List;

/**
 * What a last word needs. A missing item that is given a reason is left out for that reason; a reading that nobody could judge
 * yet is no missing item: it is judged first.
 */
public final class DecisionRules {

    /**
     * Why a last word is not accepted.
     *
     * @param field {@code outcome}, {@code reason}, or {@code open-} and the key of an item
     * @param key of the sentence in the message files
     */
    public record Fault(String field, String key) {}

    /** Start of the name of an open item's field. */
    static final String OPEN = "open-";

    private DecisionRules() {}

    public static List<Fault> faults(Handover handover, DecisionForm form) {
        List<Fault> faults = new ArrayList<>();
        if (form.outcome() == HandoverOutcome.SEND_BACK) {
            Step.SEND_BACK.refusal(handover.standing()).ifPresent(why -> faults.add(new Fault("outcome", why)));
            if (form.reason().isBlank()) {
                faults.add(new Fault("reason", "handover.decide.no-reason"));
            }
            return faults;
        }
        Step.DECIDE_LEAVES
                .refusal(handover.standing().withList(true))
                .ifPresent(why -> faults.add(new Fault("outcome", why)));
        for (ChecklistLine line : handover.missing()) {
            String key = line.item().key();
            if (line.isUnjudged()) {
                faults.add(new Fault(OPEN + key, "handover.note.unjudged"));
            } else if (form.why(key).isBlank()) {
                faults.add(new Fault(OPEN + key, "handover.decide.why"));
            }
        }
        return faults;
    }
}

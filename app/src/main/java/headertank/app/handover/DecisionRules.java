package headertank.app.handover;

import java.util.ArrayList;
import java.util.List;

/** What a last word needs. Sending a car back is always possible, with a reason. */
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
        if (handover.isDelivered()) {
            faults.add(new Fault("outcome", "handover.decide.delivered"));
        }
        if (form.outcome() == HandoverOutcome.SEND_BACK) {
            if (form.reason().isBlank()) {
                faults.add(new Fault("reason", "handover.decide.no-reason"));
            }
            return faults;
        }
        if (handover.check().signOff().isEmpty()) {
            faults.add(new Fault("outcome", "handover.decide.unsigned"));
        } else if (!handover.isSignedForDelivery()) {
            faults.add(new Fault("outcome", "handover.decide.held-back"));
        }
        if (handover.check().outOfDate()) {
            faults.add(new Fault("outcome", "handover.decide.out-of-date"));
        }
        if (!handover.faults().isEmpty()) {
            faults.add(new Fault("outcome", "handover.decide.faults"));
        }
        handover.excusable().stream()
                .map(l -> l.item().key())
                .filter(k -> form.why(k).isBlank())
                .forEach(k -> faults.add(new Fault(OPEN + k, "handover.decide.why")));
        return faults;
    }
}

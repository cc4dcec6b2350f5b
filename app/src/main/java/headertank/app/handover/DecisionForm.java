package headertank.app.handover;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/**
 * The last word as it is filled in.
 *
 * @param reason why the car goes back
 * @param open why it leaves all the same, by key of an item that is open
 */
public record DecisionForm(
        @NotNull(message = "{handover.key.missing}") UUID key,
        @NotNull(message = "{handover.decide.missing}") HandoverOutcome outcome,
        @Size(max = 2000, message = "{field.long}") String reason,
        Map<String, String> open) {

    public DecisionForm {
        reason = reason == null ? "" : reason.strip();
        Map<String, String> copy = new TreeMap<>();
        if (open != null) {
            open.forEach((item, why) -> copy.put(item, why == null ? "" : why.strip()));
        }
        // whoever fills in the form from a request writes into it once more
        open = copy;
    }

    public static DecisionForm empty() {
        return new DecisionForm(UUID.randomUUID(), null, "", Map.of());
    }

    /** What was typed for an item. */
    public String why(String item) {
        return open.getOrDefault(item, "");
    }
}

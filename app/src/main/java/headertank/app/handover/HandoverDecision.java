package headertank.app.handover;

import java.time.Instant;
import java.util.List;

/**
 * A last word that was spoken.
 *
 * @param openItems items that were open then, each with the reason why the car left all the same
 */
public record HandoverDecision(
        long id,
        long checkId,
        HandoverOutcome outcome,
        String reason,
        List<OpenItem> openItems,
        String authorName,
        Instant decidedAt) {

    public HandoverDecision {
        openItems = List.copyOf(openItems);
    }

    /** An item that was open; the reason is empty when the car was sent back. */
    public record OpenItem(String item, String reason) {}

    public boolean isDelivered() {
        return outcome == HandoverOutcome.DELIVER;
    }
}

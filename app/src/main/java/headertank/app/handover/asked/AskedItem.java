package headertank.app.handover.asked;

import java.time.Instant;

/**
 * What the owner has decided about an item of a duty's check lists.
 *
 * @param item key of the item
 * @param asked whether it is asked from then on
 */
public record AskedItem(String dutyId, String item, boolean asked, String reason, String authorName, Instant setAt) {}

package headertank.app.handover;

import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.item.ItemOutcome;
import java.util.Optional;

/** What an entry needs at an item that has an open fault, or a reading that nobody could judge yet. */
public final class EntryRules {

    private EntryRules() {}

    /** Key of the sentence that says what is missing; it is about the note. */
    public static Optional<String> fault(ChecklistLine line, EntryForm form) {
        if (form.outcome() == null) {
            return Optional.empty();
        }
        boolean leftOut = form.outcome() == ItemOutcome.NOT_APPLICABLE;
        if (leftOut && line.isFault()) {
            return Optional.of("handover.note.fault-open");
        }
        if (leftOut && line.isUnjudged()) {
            return Optional.of("handover.note.unjudged");
        }
        boolean putRight = form.outcome() == ItemOutcome.DONE && line.isFault();
        return putRight && form.note().isBlank() ? Optional.of("handover.note.put-right") : Optional.empty();
    }
}

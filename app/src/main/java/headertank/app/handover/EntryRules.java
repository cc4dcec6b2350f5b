package headertank.app.handover;

import headertank.app.handover.item.ChecklistLine;
import java.util.Optional;

/** What an entry needs at an item that has an open fault. */
public final class EntryRules {

    private EntryRules() {}

    /** Key of the sentence that says what is missing; it is about the note. */
    public static Optional<String> fault(ChecklistLine line, EntryForm form) {
        if (!line.isFault() || form.outcome() == null) {
            return Optional.empty();
        }
        return switch (form.outcome()) {
            case DONE -> form.note().isBlank() ? Optional.of("handover.note.put-right") : Optional.empty();
            case NOT_APPLICABLE -> Optional.of("handover.note.fault-open");
            case MEASURED, FAULT -> Optional.empty();
        };
    }
}

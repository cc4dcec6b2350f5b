package headertank.app.handover;

import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.item.ItemOutcome;
import headertank.app.handover.item.Measurement;
import headertank.app.handover.item.ReadingComparison;
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

    /**
     * Whether an entry says what an item's newest one says, while all that followed from that still stands: the same list in
     * another tab. A fault that was cleared meanwhile is found anew.
     */
    static boolean isSameAgain(ChecklistLine line, Measurement newest, EntryForm form, Optional<Double> valueSi) {
        boolean same = newest.outcome() == form.outcome()
                && newest.valueSi().equals(valueSi)
                && newest.note().equals(form.note());
        boolean asksForAFault = form.outcome() == ItemOutcome.FAULT
                || line.comparison().filter(ReadingComparison::isOff).isPresent();
        return same && !line.spared() && asksForAFault == line.isFault();
    }
}

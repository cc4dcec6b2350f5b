package headertank.app.handover.item;

import headertank.app.handover.photo.PhotoLine;
import headertank.calc.result.IdleExpectation.Band;
import java.util.List;
import java.util.Optional;

/**
 * An item as it stands.
 *
 * @param newest what was entered last
 * @param expected what a reading is held against
 */
public record ChecklistLine(
        CheckItem item, Optional<Measurement> newest, Optional<Band> expected, List<PhotoLine> photos) {

    public ChecklistLine {
        photos = List.copyOf(photos);
    }

    /** The reading beside what is expected, where there are both. */
    public Optional<ReadingComparison> comparison() {
        return newest.flatMap(Measurement::valueSi).flatMap(v -> expected.map(b -> ReadingComparison.of(v, b)));
    }

    public boolean isMissing() {
        return newest.isEmpty();
    }

    public boolean isFault() {
        return newest.filter(m -> m.outcome() == ItemOutcome.FAULT).isPresent();
    }

    /** Not as expected, and nobody has said why that is all right. */
    public boolean isUnexplained() {
        return comparison().filter(ReadingComparison::isOff).isPresent()
                && newest.map(Measurement::note).orElse("").isBlank();
    }

    /** Whether it still stands between the car and its delivery. */
    public boolean isOpen() {
        return isMissing() || isFault() || isUnexplained();
    }

    /** A word for colour and sign on the page. */
    public String state() {
        if (isMissing()) {
            return "missing";
        }
        if (isFault()) {
            return "fault";
        }
        if (comparison().filter(ReadingComparison::isOff).isPresent()) {
            return "off";
        }
        return newest.get().outcome() == ItemOutcome.NOT_APPLICABLE ? "left-out" : "right";
    }
}

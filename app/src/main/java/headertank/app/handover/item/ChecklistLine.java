package headertank.app.handover.item;

import headertank.app.gate.CarFault;
import headertank.app.handover.photo.PhotoLine;
import headertank.calc.result.IdleExpectation.Band;
import java.util.List;
import java.util.Optional;

/**
 * An item as it stands.
 *
 * @param newest what was entered last; where nothing was, why the shop leaves the item out
 * @param spared whether the shop leaves it out for the duties of the check, and nobody has entered anything all the same
 * @param expected what a reading is held against
 * @param open faults at this item that nobody has cleared, on whichever check of the car they were found
 * @param dayKnown whether somebody has said how warm the workshop is
 */
public record ChecklistLine(
        CheckItem item,
        Optional<Measurement> newest,
        boolean spared,
        Optional<Band> expected,
        List<PhotoLine> photos,
        List<CarFault> open,
        boolean dayKnown) {

    public ChecklistLine {
        photos = List.copyOf(photos);
        open = List.copyOf(open);
    }

    /** The reading beside what is expected, where there are both. */
    public Optional<ReadingComparison> comparison() {
        return newest.flatMap(Measurement::valueSi).flatMap(v -> expected.map(b -> ReadingComparison.of(v, b)));
    }

    /** Nothing is entered, or a reading that could not be held against anything yet. */
    public boolean isMissing() {
        return newest.isEmpty() || isUnjudged();
    }

    /** The models have an expectation for this reading once they know how warm the workshop is. */
    public boolean isUnjudged() {
        return !dayKnown
                && newest.flatMap(Measurement::valueSi).isPresent()
                && item.quantity().flatMap(MeasuredQuantity::figure).isPresent();
    }

    public boolean isFault() {
        return !open.isEmpty();
    }

    /** Whether it still stands between the car and its customer. */
    public boolean isOpen() {
        return isMissing() || isFault();
    }

    /** Whether nobody is going to look at it, for a reason: it is neither open nor done. */
    public boolean isLeftOut() {
        return !isOpen() && newest.get().outcome() == ItemOutcome.NOT_APPLICABLE;
    }

    /** A word for colour and sign on the page. */
    public String state() {
        if (isFault()) {
            return "fault";
        }
        if (isMissing()) {
            return "missing";
        }
        if (newest.get().outcome() == ItemOutcome.FAULT
                || comparison().filter(ReadingComparison::isOff).isPresent()) {
            return "cleared";
        }
        return isLeftOut() ? "left-out" : "right";
    }
}

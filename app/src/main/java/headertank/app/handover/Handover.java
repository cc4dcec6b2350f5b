package headertank.app.handover;

import headertank.app.check.stored.CheckLine;
import headertank.app.gate.CarFault;
import headertank.app.gate.Standing;
import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.item.Measurement;
import headertank.app.handover.item.WarmUpStage;
import headertank.app.handover.item.WorkshopDay;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A check list as it stands.
 *
 * @param day the workshop's air and what is expected there; empty until somebody says how warm it is
 * @param lines every item of the list
 * @param decisions last words, newest first
 * @param faults all that was ever found on the car, on this check or another, the oldest first
 * @param standing of the car, seen from this check
 */
public record Handover(
        CheckLine check,
        Optional<WorkshopDay> day,
        List<ChecklistLine> lines,
        List<HandoverDecision> decisions,
        List<CarFault> faults,
        Standing standing) {

    public Handover {
        lines = List.copyOf(lines);
        decisions = List.copyOf(decisions);
        faults = List.copyOf(faults);
        standing = standing.withList(lines.stream().noneMatch(ChecklistLine::isMissing));
    }

    public Optional<HandoverDecision> last() {
        return decisions.stream().findFirst();
    }

    /** Whether the list is decided, "the car leaves", and that still holds; a decision that came while this was read is not yet in it. */
    public boolean isDecided() {
        return standing.isRated() && standing.decided() && last().isPresent();
    }

    /** Whether somebody has said that the car leaves, and a signature or a fault has come since. */
    public boolean isOvertaken() {
        return !isDecided() && last().filter(HandoverDecision::isDelivered).isPresent();
    }

    /** Whether the customer has the car. */
    public boolean isAway() {
        return standing.away();
    }

    /** Whether something may be entered: not on a check that does not count, and not while the customer has the car. */
    public boolean isInWork() {
        return standing.isRated();
    }

    public List<CarFault> openFaults() {
        return faults.stream().filter(CarFault::isOpen).toList();
    }

    public List<ChecklistLine> open() {
        return lines.stream().filter(ChecklistLine::isOpen).toList();
    }

    public List<ChecklistLine> missing() {
        return lines.stream().filter(ChecklistLine::isMissing).toList();
    }

    /** Items that are neither open nor left out; with those two they make up the list. */
    public List<ChecklistLine> done() {
        return lines.stream().filter(l -> !l.isOpen() && !l.isLeftOut()).toList();
    }

    public List<ChecklistLine> leftOut() {
        return lines.stream().filter(ChecklistLine::isLeftOut).toList();
    }

    /** Stages that have items, in the order of the work. */
    public List<WarmUpStage> stages() {
        return Stream.of(WarmUpStage.values()).filter(s -> !of(s).isEmpty()).toList();
    }

    public List<ChecklistLine> of(WarmUpStage stage) {
        return lines.stream().filter(l -> l.item().stage() == stage).toList();
    }

    /** Key of the first item that is open; empty when there is none. */
    public Optional<String> firstOpen() {
        return lines.stream()
                .filter(ChecklistLine::isOpen)
                .map(l -> l.item().key())
                .findFirst();
    }

    /** Whether the work goes on in this stage: the first item that is open is one of it, or the item that is asked for. */
    public boolean isNext(WarmUpStage stage, String item) {
        return of(stage).stream()
                .map(l -> l.item().key())
                .anyMatch(key ->
                        key.equals(item) || firstOpen().filter(key::equals).isPresent());
    }

    /** Items at which something is measured, in the order of the work. */
    public List<ChecklistLine> measured() {
        return lines.stream().filter(l -> l.item().isMeasured()).toList();
    }

    /** Those of them that have a reading. */
    public List<ChecklistLine> readings() {
        return measured().stream()
                .filter(l -> l.newest().flatMap(Measurement::valueSi).isPresent())
                .toList();
    }

    public Optional<ChecklistLine> line(String item) {
        return lines.stream().filter(l -> l.item().key().equals(item)).findFirst();
    }
}

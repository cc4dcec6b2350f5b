package headertank.app.handover;

import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.Decision;
import headertank.app.handover.item.ChecklistLine;
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
 */
public record Handover(
        CheckLine check, Optional<WorkshopDay> day, List<ChecklistLine> lines, List<HandoverDecision> decisions) {

    public Handover {
        lines = List.copyOf(lines);
        decisions = List.copyOf(decisions);
    }

    public Optional<HandoverDecision> last() {
        return decisions.stream().findFirst();
    }

    public boolean isDelivered() {
        return last().filter(HandoverDecision::isDelivered).isPresent();
    }

    public boolean isSentBack() {
        return last().filter(d -> !d.isDelivered()).isPresent();
    }

    /** Whether somebody has signed the check for delivery. */
    public boolean isSignedForDelivery() {
        return check.signOff().filter(s -> s.decision() != Decision.HOLD_BACK).isPresent();
    }

    public List<ChecklistLine> open() {
        return lines.stream().filter(ChecklistLine::isOpen).toList();
    }

    /** Open items that a reason may excuse. */
    public List<ChecklistLine> excusable() {
        return lines.stream().filter(l -> l.isOpen() && !l.isFault()).toList();
    }

    public List<ChecklistLine> faults() {
        return lines.stream().filter(ChecklistLine::isFault).toList();
    }

    public long entered() {
        return lines.stream().filter(l -> !l.isMissing()).count();
    }

    /** Stages that have items, in the order of the work. */
    public List<WarmUpStage> stages() {
        return Stream.of(WarmUpStage.values()).filter(s -> !of(s).isEmpty()).toList();
    }

    public List<ChecklistLine> of(WarmUpStage stage) {
        return lines.stream().filter(l -> l.item().stage() == stage).toList();
    }

    public Optional<ChecklistLine> line(String item) {
        return lines.stream().filter(l -> l.item().key().equals(item)).findFirst();
    }
}

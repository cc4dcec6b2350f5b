package headertank.app.handover;

import headertank.app.check.Checks;
import headertank.app.check.SignOffForm;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.item.ItemOutcome;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Check lists for tests; the technician who is signed in goes through them. */
@Component
public class Lists {

    public static final double WORKSHOP_K = 293.15;

    private final Handovers handovers;
    private final Checks checks;

    Lists(Handovers handovers, Checks checks) {
        this.handovers = handovers;
        this.checks = checks;
    }

    /** Everything that is missing is done, or read just as expected. */
    public void answerAll(long check) {
        if (handovers.of(check).day().isEmpty()) {
            handovers.setDay(check, WORKSHOP_K, UUID.randomUUID());
        }
        handovers.of(check).missing().forEach(line -> answer(check, line));
    }

    private void answer(long check, ChecklistLine line) {
        if (line.item().isMeasured() && line.expected().isEmpty()) {
            enter(check, line.item().key(), ItemOutcome.NOT_APPLICABLE, null, "nothing is expected here");
        } else if (line.item().isMeasured()) {
            enter(
                    check,
                    line.item().key(),
                    ItemOutcome.MEASURED,
                    line.expected().get().expected(),
                    "");
        } else {
            enter(check, line.item().key(), ItemOutcome.DONE, null, "looked at");
        }
    }

    public void enter(long check, String item, ItemOutcome outcome, Double value, String note) {
        handovers.enter(
                check,
                new EntryForm(UUID.randomUUID(), item, outcome, "", note),
                Optional.ofNullable(value),
                value == null ? "" : "typed");
    }

    public void decideLeaves(long check) {
        handovers.decide(check, new DecisionForm(UUID.randomUUID(), HandoverOutcome.DELIVER, "", Map.of()));
    }

    public void sendBack(long check, String reason) {
        handovers.decide(check, new DecisionForm(UUID.randomUUID(), HandoverOutcome.SEND_BACK, reason, Map.of()));
    }

    /** Signs with all conditions accepted. */
    public void sign(long check, Decision decision) {
        checks.sign(
                check,
                new SignOffForm(
                        decision,
                        "Signed with Street in mind.",
                        checks.byId(check).result().conditions().stream()
                                .map(CheckResult.Condition::key)
                                .toList()));
    }
}

package headertank.app.gate;

import static headertank.app.shop.Role.FRONT_DESK;
import static headertank.app.shop.Role.OWNER;
import static headertank.app.shop.Role.TECHNICIAN;

import headertank.app.gate.Standing.Check;
import headertank.app.gate.Standing.Job;
import headertank.app.gate.Standing.Open;
import headertank.app.shop.Role;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * All that can be done with a car between the counter and its customer. Each step says who may take it, what stands in its way
 * and where it leads.
 */
public enum Step {
    OPEN_JOB(Set.of(FRONT_DESK, OWNER), s -> no(isOpen(s), "gate.job-open"), Step::opened),
    PAUSE(Set.of(FRONT_DESK, OWNER), s -> no(s.job() != Job.OPEN, "gate.job-closed"), s -> s.withJob(Job.PAUSED)),
    RESUME(Set.of(FRONT_DESK, OWNER), s -> no(s.job() != Job.PAUSED, "gate.job-closed"), s -> s.withJob(Job.OPEN)),
    CALL_OFF(Set.of(FRONT_DESK, OWNER), s -> no(!isOpen(s), "gate.job-closed"), s -> s.withJob(Job.CALLED_OFF)
            .withAway(true)),
    /** The last click: the customer has the car. */
    HAND_OVER(
            Set.of(FRONT_DESK, OWNER),
            s -> no(s.job() != Job.OPEN, "gate.job-closed").or(() -> no(!s.mayLeave(), "gate.may-not-leave")),
            s -> s.withJob(Job.HANDED_OVER).withAway(true)),
    /** It was not the last click after all. */
    TAKE_BACK(Set.of(OWNER), s -> no(s.job() != Job.HANDED_OVER, "gate.not-handed-over"), s -> s.withJob(Job.OPEN)
            .withAway(false)),

    SAVE_REVISION(Set.of(FRONT_DESK, TECHNICIAN), s -> Optional.empty(), Standing::revised),
    /** Rating with nothing changed leads to the check that there is. */
    RATE(
            Set.of(TECHNICIAN),
            s -> no(!s.described(), "gate.not-described"),
            s -> s.isRated() ? s : s.rated(Check.UNSIGNED)),
    SIGN_LEAVES(
            Set.of(TECHNICIAN),
            s -> no(!s.isRated(), "gate.not-current").or(() -> no(s.check() == Check.LEAVES, "gate.signed-so")),
            s -> s.signed(Check.LEAVES)),
    SIGN_STAYS(
            Set.of(TECHNICIAN),
            s -> no(!s.isRated(), "gate.not-current").or(() -> no(s.check() == Check.STAYS, "gate.signed-so")),
            s -> s.signed(Check.STAYS)),

    /** Every item of the list that is open gets what it asks for. */
    ANSWER_ALL(Set.of(TECHNICIAN), s -> no(!s.isRated(), "gate.not-current"), s -> s.withList(true)),
    /** Every item without an answer is left out, each for a reason; where a fault is open nothing is left out. */
    LEAVE_OUT(
            Set.of(TECHNICIAN),
            s -> no(!s.isRated(), "gate.not-current").or(() -> no(s.hasFaultAtAnItem(), "gate.fault-open")),
            s -> s.withList(true)),
    /** The owner decides what lists ask for a duty. That is about later checks: no car moves by it, and no fault goes. */
    CHANGE_LIST(Set.of(OWNER), s -> Optional.empty(), s -> s),
    FIND_FAULT(Set.of(TECHNICIAN), s -> no(!s.isRated(), "gate.not-current"), s -> found(s, FaultKind.FOUND)),
    READ_OUTSIDE(Set.of(TECHNICIAN), s -> no(!s.isRated(), "gate.not-current"), s -> found(s, FaultKind.READING)),
    SEND_BACK(Set.of(TECHNICIAN), s -> no(!s.isRated(), "gate.not-current"), s -> found(s, FaultKind.SENT_BACK)),
    /** A reading within what is expected clears what the item's readings have opened. */
    READ_WITHIN(
            Set.of(TECHNICIAN),
            s -> no(!s.isRated(), "gate.not-current"),
            s -> s.withFault(FaultKind.READING, Open.NONE)),
    CLEAR_BY_REVISION(
            Set.of(TECHNICIAN, OWNER),
            s -> no(s.away(), "gate.away")
                    .or(() -> no(s.faults().values().stream().noneMatch(Open::hasOld), "gate.no-newer-revision")),
            s -> {
                Standing now = s;
                for (FaultKind kind : FaultKind.values()) {
                    now = now.withFault(kind, s.open(kind).withoutOld());
                }
                return now;
            }),
    CLEAR_BY_REASON(
            Set.of(TECHNICIAN, OWNER),
            s -> no(s.away(), "gate.away").or(() -> no(!s.hasFault(), "gate.no-fault")),
            s -> {
                Standing now = s;
                for (FaultKind kind : FaultKind.values()) {
                    now = now.withFault(kind, Open.NONE);
                }
                return now;
            }),
    /** The list's last word: the car leaves. */
    DECIDE_LEAVES(
            Set.of(TECHNICIAN),
            s -> no(!s.isRated(), "gate.not-current")
                    .or(() -> no(s.check() == Check.UNSIGNED, "gate.not-signed"))
                    .or(() -> no(s.check() == Check.STAYS, "gate.signed-to-stay"))
                    .or(() -> no(s.hasFault(), "gate.fault-open"))
                    .or(() -> no(!s.listComplete(), "gate.items-missing"))
                    .or(() -> no(s.decided(), "gate.decided")),
            s -> s.withDecision(true));

    private final Set<Role> roles;
    private final Function<Standing, Optional<String>> refusal;
    private final UnaryOperator<Standing> next;

    Step(Set<Role> roles, Function<Standing, Optional<String>> refusal, UnaryOperator<Standing> next) {
        this.roles = roles;
        this.refusal = refusal;
        this.next = next;
    }

    /** Who may take it, any one role suffices; {@code RouteRights} says the same of its route. */
    public Set<Role> roles() {
        return roles;
    }

    /** Key of the sentence that says why it cannot be taken there; empty when it can. */
    public Optional<String> refusal(Standing from) {
        return refusal.apply(from);
    }

    /**
     * Where it leads.
     *
     * @throws IllegalStateException when it cannot be taken there
     */
    public Standing from(Standing before) {
        refusal(before).ifPresent(why -> {
            throw new IllegalStateException(this + " from " + before + ": " + why);
        });
        return next.apply(before);
    }

    private static Optional<String> no(boolean hindered, String key) {
        return hindered ? Optional.of(key) : Optional.empty();
    }

    private static boolean isOpen(Standing s) {
        return s.job() == Job.OPEN || s.job() == Job.PAUSED;
    }

    /** A new job asks anew: what was signed for an earlier one does not answer it. */
    private static Standing opened(Standing s) {
        Standing open = s.withJob(Job.OPEN);
        boolean answered = s.check() == Check.LEAVES || s.check() == Check.STAYS || s.away();
        return answered ? open.rated(Check.NONE) : open;
    }

    private static Standing found(Standing s, FaultKind kind) {
        return s.withFault(kind, s.open(kind).found()).withDecision(false);
    }
}

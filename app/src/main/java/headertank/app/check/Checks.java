package headertank.app.check;

import headertank.app.audit.AuditTrail;
import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.snapshot.Snapshot;
import headertank.app.check.stored.CheckFormat;
import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.StoredCheck;
import headertank.app.duty.Duties;
import headertank.app.evidence.Lesson;
import headertank.app.evidence.Lessons;
import headertank.app.evidence.Seen;
import headertank.app.form.FormKeys;
import headertank.app.gate.Gate;
import headertank.app.gate.Step;
import headertank.app.problem.ConflictException;
import headertank.app.shop.CurrentUser;
import headertank.app.stored.Sha256;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.duty.Duty;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/** Rates revisions, keeps what came out, and takes signatures. A stored check never changes. */
@Service
public class Checks {

    private final Revisions revisions;
    private final Supplier<Rater> rater;
    private final Duties duties;
    private final CheckStore store;
    private final CarSearch cars;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final ApplicationEventPublisher events;
    private final ShopFigures figures;
    private final FormKeys forms;
    private final Gate gate;
    private final Lessons lessons;
    private final RatingBench bench;
    private final TransactionTemplate transactions;

    Checks(
            Revisions revisions,
            Supplier<Rater> rater,
            Duties duties,
            CheckStore store,
            CarSearch cars,
            CurrentUser user,
            AuditTrail audit,
            ApplicationEventPublisher events,
            ShopFigures figures,
            FormKeys forms,
            Gate gate,
            Lessons lessons,
            RatingBench bench,
            TransactionTemplate transactions) {
        this.revisions = revisions;
        this.rater = rater;
        this.duties = duties;
        this.store = store;
        this.cars = cars;
        this.user = user;
        this.audit = audit;
        this.events = events;
        this.figures = figures;
        this.forms = forms;
        this.gate = gate;
        this.lessons = lessons;
        this.bench = bench;
        this.transactions = transactions;
    }

    /** Rates a revision once more, as from a form that nobody has sent before. */
    public long run(long carId, int revisionNumber) {
        return run(carId, revisionNumber, UUID.randomUUID());
    }

    /** The same as from a form. */
    public long run(long carId, int revisionNumber, UUID formKey) {
        return rate(carId, revisionNumber, formKey).checkId();
    }

    /** @param unchanged whether the car was rated so before, and nothing has changed since */
    public record Rated(long checkId, boolean unchanged) {}

    /**
     * Rates a revision for its duties, as the car is known by its evidence, and stores the outcome. Where revision, evidence, duties,
     * thresholds, plug-ins and physics give what the newest check holds already, that check is the answer. What the evidence teaches is
     * learned first, where that is not done yet, while no transaction is open.
     *
     * <p>It is computed before the transaction begins: whoever rates for long keeps no connection and nothing locked.
     *
     * @param formKey of the form that is sent; the same key again answers with the check that it made the first time
     */
    public Rated rate(long carId, int revisionNumber, UUID formKey) {
        Revision revision = revisions.of(carId, revisionNumber);
        Optional<Computed> computed =
                forms.isSent(user.shopId(), formKey, revision.id()) ? Optional.empty() : Optional.of(compute(revision));
        return transactions.execute(t -> {
            AtomicBoolean unchanged = new AtomicBoolean();
            long id = forms.once(
                    user.shopId(),
                    formKey,
                    "check_run",
                    revision.id(),
                    () -> keep(revision, computed.orElseThrow(), unchanged));
            return new Rated(id, unchanged.get());
        });
    }

    private record Computed(CheckInput input, CheckResult result) {}

    private Computed compute(Revision revision) {
        Optional<Seen> seen = lessons.ready(revision.carId());
        Rater here = seen.map(s -> lessons.knowing(s.lesson())).orElseGet(rater);
        List<Duty> of = duties(revision, here);
        return bench.compute(() -> {
            Rating rating = here.rate(revision.spec().build(), of);
            return new Computed(
                    Snapshot.input(rating, revision.id(), revision.number(), seen),
                    Snapshot.result(rating, here, seen));
        });
    }

    /** Whether a check says the same to the last digit when it is computed anew. */
    boolean repeats(CheckLine check) {
        Computed anew = compute(revisions.of(check.carId(), check.revisionNumber()));
        return store.holds(check.id(), anew.input(), anew.result());
    }

    /**
     * The newest checks of a shop that were made by this physics, by the figures that the shop has now, and by what is known of their
     * cars now.
     */
    List<CheckLine> ofNow(int limit) {
        return store.ofNow(user.shopId(), limit).stream()
                .filter(c -> input(c.id())
                        .learned()
                        .map(CheckInput.LearnedFrom::lesson)
                        .equals(lessons.lesson(c.carId()).map(Lesson::id)))
                .toList();
    }

    private long keep(Revision revision, Computed computed, AtomicBoolean unchanged) {
        gate.hold(revision.carId());
        Optional<Long> same = unchanged(revision, computed.input(), computed.result());
        if (same.isPresent()) {
            unchanged.set(true);
            return same.get();
        }
        long id = store.insert(user.shopId(), user.accountId(), computed.input(), computed.result());
        audit.record("check.run", "check_run", id, "revision " + revision.id());
        return id;
    }

    /** The stored check that says the same to the last digit, unless another visit of the car has begun since. */
    private Optional<Long> unchanged(Revision revision, CheckInput input, CheckResult result) {
        return store.newestOf(user.shopId(), revision.id())
                .filter(id -> store.holds(id, input, result))
                .filter(id -> !isNewest(revision)
                        || gate.ofCheck(revision.carId(), id).isRated());
    }

    private boolean isNewest(Revision revision) {
        return revisions
                .latest(revision.carId())
                .filter(r -> r.id() == revision.id())
                .isPresent();
    }

    private List<Duty> duties(Revision revision, Rater here) {
        return revision.spec().dutyIds().stream()
                .map(id -> Optional.ofNullable(here.duties().get(id))
                        .orElseThrow(() -> new ConflictException(
                                duties.isSwitchedOff(id) ? "check.duty-off" : "check.duty-unknown", id)))
                .toList();
    }

    /** A check of this shop. */
    public StoredCheck byId(long id) {
        return store.whole(user.shopId(), id);
    }

    /** What went into a check. */
    public CheckInput input(long id) {
        return store.input(user.shopId(), id);
    }

    /** The newest check of a revision. */
    public Optional<StoredCheck> newestOf(Revision revision) {
        return store.newestOf(user.shopId(), revision.id()).map(this::byId);
    }

    /** Checks of a car, newest first. */
    public List<CheckLine> ofCar(long carId, int limit) {
        cars.car(carId);
        return store.ofCar(user.shopId(), carId, limit);
    }

    /**
     * Signs a check. A later signature replaces the one before; all of them stay.
     *
     * @throws ConflictException when the check does not count, is signed so already, or the rules do not allow this signature
     */
    @Transactional
    public void sign(long checkId, SignOffForm form, UUID formKey) {
        forms.once(user.shopId(), formKey, "sign_off", said(checkId, form), () -> {
            gate.hold(byId(checkId).line().carId());
            return sign(byId(checkId), form);
        });
    }

    /** Signs a check, as from a form that nobody has sent before. */
    @Transactional
    public void sign(long checkId, SignOffForm form) {
        sign(checkId, form, UUID.randomUUID());
    }

    /** Whether this form has done its work. */
    public boolean isSent(long checkId, SignOffForm form, UUID formKey) {
        return forms.isSent(user.shopId(), formKey, said(checkId, form));
    }

    private static String said(long checkId, SignOffForm form) {
        return checkId + " " + form;
    }

    /** Whether this is the check by which its car leaves or stays. */
    public boolean counts(StoredCheck check) {
        return gate.ofCheck(check.line().carId(), check.line().id()).isRated();
    }

    /** Why this signature is not accepted, empty when it is. */
    public List<SignOffFault> faults(StoredCheck check, SignOffForm form) {
        List<SignOffFault> faults = SignOffRules.faults(check, form, figures.current());
        return faults.isEmpty() && form.decision() != null
                ? refusal(check, form).map(why -> new SignOffFault("decision", why, "")).stream()
                        .toList()
                : faults;
    }

    /** Why this signature cannot be set now, whatever it says; the key of a sentence. */
    private Optional<String> refusal(StoredCheck check, SignOffForm form) {
        Step step = form.decision() == Decision.HOLD_BACK ? Step.SIGN_STAYS : Step.SIGN_LEAVES;
        return step.refusal(gate.ofCheck(check.line().carId(), check.line().id()));
    }

    private long sign(StoredCheck check, SignOffForm form) {
        long checkId = check.line().id();
        refusal(check, form).ifPresent(why -> {
            throw new ConflictException(why);
        });
        if (!SignOffRules.faults(check, form, figures.current()).isEmpty()) {
            throw new ConflictException("check.sign.not-allowed");
        }
        List<String> accepted = check.result().conditions().stream()
                .map(CheckResult.Condition::key)
                .filter(form.accepted()::contains)
                .toList();
        long id = store.sign(
                user.shopId(),
                user.accountId(),
                checkId,
                form,
                accepted,
                Sha256.of(signedText(check, user.accountId(), form, accepted)));
        audit.record("check.signed", "check_run", checkId, form.decision().name());
        events.publishEvent(new CheckSigned(check.line().carId(), checkId, form.decision()));
        return id;
    }

    /** What a signature is set under: inputs and result by their hashes, and the decision. */
    static String signedText(StoredCheck check, long signer, SignOffForm form, List<String> accepted) {
        return CheckFormat.canonical(Map.of(
                "check", check.line().id(),
                "conditions", accepted,
                "decision", form.decision().name(),
                "inputSha256", check.inputSha256(),
                "remark", form.remark(),
                "resultSha256", check.resultSha256(),
                "signer", signer));
    }
}

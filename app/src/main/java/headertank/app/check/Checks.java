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
import headertank.app.check.stored.StoredCheck;
import headertank.app.duty.Duties;
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
import java.util.function.Supplier;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

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
    private final JdbcClient jdbc;
    private final ApplicationEventPublisher events;
    private final ShopFigures figures;

    Checks(
            Revisions revisions,
            Supplier<Rater> rater,
            Duties duties,
            CheckStore store,
            CarSearch cars,
            CurrentUser user,
            AuditTrail audit,
            JdbcClient jdbc,
            ApplicationEventPublisher events,
            ShopFigures figures) {
        this.revisions = revisions;
        this.rater = rater;
        this.duties = duties;
        this.store = store;
        this.cars = cars;
        this.user = user;
        this.audit = audit;
        this.jdbc = jdbc;
        this.events = events;
        this.figures = figures;
    }

    /** Rates a revision once more, as from a form that nobody has sent before. */
    @Transactional
    public long run(long carId, int revisionNumber) {
        return run(carId, revisionNumber, UUID.randomUUID());
    }

    /**
     * Rates a revision for its duties and stores the outcome.
     *
     * @param formKey of the form that is sent; the same key again answers with the check that it made the first time
     * @return the check's id
     */
    @Transactional
    public long run(long carId, int revisionNumber, UUID formKey) {
        Revision revision = revisions.of(carId, revisionNumber);
        store.oneAtATime(formKey);
        Optional<Long> sentBefore = store.ofForm(user.shopId(), revision.id(), formKey);
        return sentBefore.orElseGet(() -> rate(revision, formKey));
    }

    private long rate(Revision revision, UUID formKey) {
        Rater here = rater.get();
        Rating rating = here.rate(revision.spec().build(), duties(revision, here));
        long id = store.insert(
                user.shopId(),
                user.accountId(),
                formKey,
                Snapshot.input(rating, revision.id(), revision.number()),
                Snapshot.result(rating, here));
        audit.record("check.run", "check_run", id, "revision " + revision.id());
        return id;
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
     * Signs a check.
     *
     * @throws ConflictException when somebody has signed before, or the rules do not allow this signature
     */
    @Transactional
    public void sign(long checkId, SignOffForm form) {
        StoredCheck check = byId(checkId);
        if (check.isSigned()) {
            throw new ConflictException("check.sign.already");
        }
        if (!SignOffRules.faults(check, form, figures.current()).isEmpty()) {
            throw new ConflictException("check.sign.not-allowed");
        }
        List<String> accepted = check.result().conditions().stream()
                .map(CheckResult.Condition::key)
                .filter(form.accepted()::contains)
                .toList();
        try {
            jdbc.sql("""
                            insert into sign_off (shop_id, check_run_id, signer_id, decision, remark, conditions, signed_sha256)
                            values (:shop, :check, :signer, :decision, :remark, :conditions, :hash)""")
                    .param("shop", user.shopId())
                    .param("check", checkId)
                    .param("signer", user.accountId())
                    .param("decision", form.decision().name())
                    .param("remark", form.remark())
                    .param("conditions", String.join(",", accepted))
                    .param("hash", Sha256.of(signedText(check, user.accountId(), form, accepted)))
                    .update();
        } catch (DuplicateKeyException e) {
            throw new ConflictException("check.sign.already");
        }
        audit.record("check.signed", "check_run", checkId, form.decision().name());
        events.publishEvent(new CheckSigned(check.line().carId(), checkId, form.decision()));
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

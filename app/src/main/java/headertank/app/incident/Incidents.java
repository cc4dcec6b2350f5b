package headertank.app.incident;

import headertank.app.audit.AuditTrail;
import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.form.FormKeys;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what was seen when a car ran hot. */
@Service
@Transactional(readOnly = true)
public class Incidents {

    private static final int CHECKS_LOOKED_AT = 500;

    private final IncidentStore store;
    private final Revisions revisions;
    private final Checks checks;
    private final CarSearch cars;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;

    Incidents(
            IncidentStore store,
            Revisions revisions,
            Checks checks,
            CarSearch cars,
            CurrentUser user,
            AuditTrail audit,
            FormKeys forms) {
        this.store = store;
        this.revisions = revisions;
        this.checks = checks;
        this.cars = cars;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
    }

    /** Notes that a car ran hot; returns the report's id. */
    @Transactional
    public long report(long carId, IncidentForm form, IncidentEntry entry, UUID key) {
        return forms.once(user.shopId(), key, "incident", carId + " " + form, () -> report(carId, form, entry));
    }

    private long report(long carId, IncidentForm form, IncidentEntry entry) {
        Revision revision = revisions.of(carId, form.revision());
        Long compared = lastGood(carId, form.duty(), entry.occurredAt())
                .map(CheckLine::id)
                .orElse(null);
        long id = store.add(user.shopId(), user.accountId(), revision, compared, form, entry);
        audit.record("incident.reported", "incident", id, "car " + carId);
        return id;
    }

    /** The newest check that was signed for delivery before that moment; else the newest that was a go for that duty. */
    Optional<CheckLine> lastGood(long carId, String duty, Instant before) {
        List<CheckLine> all = checks.ofCar(carId, CHECKS_LOOKED_AT);
        Optional<CheckLine> signed = all.stream()
                .filter(c -> covers(c, duty))
                .filter(c -> c.signOff()
                        .filter(s -> s.decision() == Decision.DELIVER
                                && !s.signedAt().isAfter(before))
                        .isPresent())
                .findFirst();
        return signed.isPresent()
                ? signed
                : all.stream()
                        .filter(c -> !c.createdAt().isAfter(before))
                        .filter(c -> isGo(c, duty))
                        .findFirst();
    }

    private static boolean covers(CheckLine check, String duty) {
        return duty.isEmpty()
                || check.verdicts().stream().anyMatch(v -> v.duty().equals(duty));
    }

    private static boolean isGo(CheckLine check, String duty) {
        return covers(check, duty)
                && check.verdicts().stream()
                        .filter(v -> duty.isEmpty() || v.duty().equals(duty))
                        .allMatch(v -> v.verdict() == StoredVerdict.GO);
    }

    /** A report of this shop. */
    public Incident byId(long id) {
        return store.byId(user.shopId(), id).orElseThrow(() -> new NotFoundException("incident", id));
    }

    /** Reports about a car, newest first. */
    public List<Incident> ofCar(long carId, int limit) {
        cars.car(carId);
        return store.ofCar(user.shopId(), carId, limit);
    }
}

package headertank.app.carspec;

import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.part.FittedParts;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.calc.carspec.BuildDifference;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The revisions of the current shop's cars. */
@Service("revisions")
@Transactional(readOnly = true)
public class Revisions {

    private final RevisionStore store;
    private final FittedParts parts;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final ApplicationEventPublisher events;
    private final FormKeys forms;

    Revisions(
            RevisionStore store,
            FittedParts parts,
            CurrentUser user,
            AuditTrail audit,
            ApplicationEventPublisher events,
            FormKeys forms) {
        this.store = store;
        this.parts = parts;
        this.user = user;
        this.audit = audit;
        this.events = events;
        this.forms = forms;
    }

    /** The car's newest revision; empty for a car without any, and for a car of another shop. */
    public Optional<Revision> latest(long carId) {
        return store.latest(user.shopId(), carId);
    }

    /** @throws NotFoundException when the car has no such revision */
    public Revision of(long carId, int number) {
        return store.of(user.shopId(), carId, number)
                .orElseThrow(() -> new NotFoundException("revision of car " + carId, number));
    }

    /** @throws NotFoundException when the shop has no such revision */
    public Revision byId(long revisionId) {
        return store.byId(user.shopId(), revisionId).orElseThrow(() -> new NotFoundException("revision", revisionId));
    }

    /** All revisions of a car, newest first. */
    public List<Revision> all(long carId) {
        return store.all(user.shopId(), carId);
    }

    /**
     * Adds a revision in the name of whoever has signed in.
     *
     * @param parentNumber the revision that the form was filled from; null when the car had none
     * @param reason why, may be empty for the first
     * @param formKey of the form that is sent; the same key again answers with what it made the first time
     * @return the revision that now holds the spec: a new one, or the parent when nothing differs from it
     * @throws OvertakenException when somebody else saved from the same parent first; nothing is saved then
     */
    @Transactional
    public Revision save(long carId, Integer parentNumber, Spec spec, String reason, UUID formKey) {
        return save(user.shopId(), user.accountId(), carId, parentNumber, spec, reason, formKey);
    }

    /** The same in the name of an account that has not signed in, for data that the program brings along. */
    @Transactional
    public Revision saveFor(
            long shopId, long authorId, long carId, Integer parentNumber, Spec spec, String reason, UUID formKey) {
        return save(shopId, authorId, carId, parentNumber, spec, reason, formKey);
    }

    private Revision save(
            long shopId, long authorId, long carId, Integer parentNumber, Spec spec, String reason, UUID formKey) {
        String said = carId + " " + store.text(spec) + " " + spec.parts();
        long id = forms.once(shopId, formKey, "revision", said, () -> {
            store.oneAtATime(shopId, carId);
            return saved(shopId, authorId, carId, parentNumber, spec, reason);
        });
        return store.byId(shopId, id).orElseThrow();
    }

    private long saved(long shopId, long authorId, long carId, Integer parentNumber, Spec spec, String reason) {
        Optional<Revision> parent = store.latest(shopId, carId);
        Integer newest = parent.map(Revision::number).orElse(null);
        if (newest == null ? parentNumber != null : !newest.equals(parentNumber)) {
            throw new OvertakenException();
        }
        if (parent.isPresent() && same(parent.get().spec(), spec)) {
            return parent.get().id();
        }
        return insert(shopId, authorId, carId, newest, spec, reason);
    }

    private long insert(long shopId, long authorId, long carId, Integer parent, Spec spec, String reason) {
        int number = parent == null ? 1 : parent + 1;
        long id = store.add(shopId, authorId, carId, number, parent, spec, reason);
        parts.store(shopId, id, spec.parts(), spec.build().entries());
        String detail = "car " + carId + " revision " + number;
        if (user.member().isPresent()) {
            audit.record("revision.saved", "revision", id, detail);
        } else {
            audit.recordByProgram(shopId, "revision.saved", "revision", id, detail);
        }
        events.publishEvent(new RevisionSaved(carId, number, id));
        return id;
    }

    /** Whether two specs say the same; how a number was typed does not matter. */
    static boolean same(Spec a, Spec b) {
        return a.build().carClass() == b.build().carClass()
                && a.dutyIds().equals(b.dutyIds())
                && a.parts().equals(b.parts())
                && BuildDifference.between(a.build(), b.build()).isEmpty();
    }
}

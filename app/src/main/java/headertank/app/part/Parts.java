package headertank.app.part;

import headertank.app.audit.AuditTrail;
import headertank.app.field.FieldFormat;
import headertank.app.form.FormKeys;
import headertank.app.form.FormKeys.Sent;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds, changes and retires parts. A change made from an outdated form is refused, not merged. */
@Service
@Transactional
public class Parts {

    private final PartRepository parts;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;

    Parts(PartRepository parts, CurrentUser user, AuditTrail audit, FormKeys forms) {
        this.parts = parts;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
    }

    /** Adds a part, unless there is something in the way of it. */
    public <P> Sent<P> add(PartContent content, UUID key, Supplier<Optional<P>> inTheWay) {
        return forms.once(user.shopId(), key, "part", content, inTheWay, () -> add(content));
    }

    /** The same from a file; returns the new part's id. */
    public long add(PartContent content) {
        Part added = parts.saveAndFlush(new Part(user.shopId(), content, FieldFormat.write(content.values())));
        audit.record("part.added", "part", added.id(), "");
        return added.id();
    }

    /** The same in the name of the program, for data that it brings along. */
    public long addFor(long shopId, PartContent content) {
        Part added = parts.saveAndFlush(new Part(shopId, content, FieldFormat.write(content.values())));
        audit.recordByProgram(shopId, "part.added", "part", added.id(), "");
        return added.id();
    }

    /** @throws ObjectOptimisticLockingFailureException when somebody else saved since the form was filled */
    public void change(long id, PartContent content, Integer seen) {
        Part part = find(id, seen);
        part.take(content, FieldFormat.write(content.values()));
        parts.saveAndFlush(part);
        audit.record("part.changed", "part", id, "");
    }

    /** Takes a part out of the choices, or back into them. Cars that have it keep it. */
    public void retire(long id, boolean gone, Integer seen) {
        find(id, seen).retire(gone);
        audit.record(gone ? "part.retired" : "part.brought-back", "part", id, "");
    }

    private Part find(long id, Integer seen) {
        Part part = parts.findByIdAndShopId(id, user.shopId()).orElseThrow(() -> new NotFoundException("part", id));
        if (seen == null || seen != part.version()) {
            throw new ObjectOptimisticLockingFailureException(Part.class, id);
        }
        return part;
    }
}

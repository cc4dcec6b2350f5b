package headertank.app.carspec;

import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.field.FieldFormat;
import headertank.app.part.FittedParts;
import headertank.app.part.PartKind;
import headertank.app.part.PartRef;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.app.stored.Sha256;
import headertank.calc.carspec.BuildDifference;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The revisions of the current shop's cars. Rows are only ever added. */
@Service("revisions")
@Transactional(readOnly = true)
public class Revisions {

    private static final String SELECT = """
            select r.id, r.car_id, r.number, r.parent_number, r.spec_text, r.author_id, a.name as author, r.reason, r.saved_at,
                   (select string_agg(f.slot || '=' || f.part_id || ':' || encode(f.values_sha256, 'hex'), ',')
                    from fitted_part f where f.revision_id = r.id) as parts
            from revision r join account a on a.id = r.author_id
            where r.shop_id = :shop
            """;

    private final JdbcClient jdbc;
    private final SpecFormat format;
    private final FittedParts parts;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final ApplicationEventPublisher events;
    private final FormKeys forms;

    Revisions(
            JdbcClient jdbc,
            SpecFormat format,
            FittedParts parts,
            CurrentUser user,
            AuditTrail audit,
            ApplicationEventPublisher events,
            FormKeys forms) {
        this.jdbc = jdbc;
        this.format = format;
        this.parts = parts;
        this.user = user;
        this.audit = audit;
        this.events = events;
        this.forms = forms;
    }

    /** The car's newest revision; empty for a car without any, and for a car of another shop. */
    public Optional<Revision> latest(long carId) {
        return latest(user.shopId(), carId);
    }

    private Optional<Revision> latest(long shopId, long carId) {
        return jdbc.sql(SELECT + " and r.car_id = :car order by r.number desc limit 1")
                .param("shop", shopId)
                .param("car", carId)
                .query(this::revision)
                .optional();
    }

    /** @throws NotFoundException when the car has no such revision */
    public Revision of(long carId, int number) {
        return jdbc.sql(SELECT + " and r.car_id = :car and r.number = :number")
                .param("shop", user.shopId())
                .param("car", carId)
                .param("number", number)
                .query(this::revision)
                .optional()
                .orElseThrow(() -> new NotFoundException("revision of car " + carId, number));
    }

    /** @throws NotFoundException when the shop has no such revision */
    public Revision byId(long revisionId) {
        return jdbc.sql(SELECT + " and r.id = :id")
                .param("shop", user.shopId())
                .param("id", revisionId)
                .query(this::revision)
                .optional()
                .orElseThrow(() -> new NotFoundException("revision", revisionId));
    }

    /** All revisions of a car, newest first. */
    public List<Revision> all(long carId) {
        return jdbc.sql(SELECT + " and r.car_id = :car order by r.number desc")
                .param("shop", user.shopId())
                .param("car", carId)
                .query(this::revision)
                .list();
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
        String said = carId + " " + format.write(spec) + " " + spec.parts();
        long id = forms.once(shopId, formKey, "revision", said, () -> {
            oneAtATime(shopId, carId);
            return saved(shopId, authorId, carId, parentNumber, spec, reason);
        });
        return jdbc.sql(SELECT + " and r.id = :id")
                .param("shop", shopId)
                .param("id", id)
                .query(this::revision)
                .single();
    }

    private long saved(long shopId, long authorId, long carId, Integer parentNumber, Spec spec, String reason) {
        Optional<Revision> parent = latest(shopId, carId);
        Integer newest = parent.map(Revision::number).orElse(null);
        if (newest == null ? parentNumber != null : !newest.equals(parentNumber)) {
            throw new OvertakenException();
        }
        if (parent.isPresent() && same(parent.get().spec(), spec)) {
            return parent.get().id();
        }
        return insert(shopId, authorId, carId, newest, spec, reason);
    }

    /** Savers of one car queue for the moment of saving; nobody waits while somebody types. */
    private void oneAtATime(long shopId, long carId) {
        jdbc.sql("select id from car where id = :car and shop_id = :shop for no key update")
                .param("car", carId)
                .param("shop", shopId)
                .query(Long.class)
                .optional()
                .orElseThrow(() -> new NotFoundException("car", carId));
    }

    private long insert(long shopId, long authorId, long carId, Integer parent, Spec spec, String reason) {
        int number = parent == null ? 1 : parent + 1;
        String text = format.write(spec);
        long id = jdbc.sql("""
                        insert into revision (shop_id, car_id, number, parent_number, spec_format, spec_text, spec_sha256,
                                              author_id, reason)
                        values (:shop, :car, :number, :parent, :format, :text, :hash, :author, :reason)
                        returning id""")
                .param("shop", shopId)
                .param("car", carId)
                .param("number", number)
                .param("parent", parent, Types.INTEGER)
                .param("format", FieldFormat.FORMAT)
                .param("text", text)
                .param("hash", Sha256.of(text))
                .param("author", authorId)
                .param("reason", reason)
                .query(Long.class)
                .single();
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

    private static Map<PartKind, PartRef> parts(String joined) {
        Map<PartKind, PartRef> parts = new EnumMap<>(PartKind.class);
        if (joined != null) {
            for (String slot : joined.split(",")) {
                int split = slot.indexOf('=');
                parts.put(
                        PartKind.valueOf(slot.substring(0, split)),
                        PartRef.of(slot.substring(split + 1)).orElseThrow());
            }
        }
        return parts;
    }

    private Revision revision(ResultSet row, int n) throws SQLException {
        String text = row.getString("spec_text");
        return new Revision(
                row.getLong("id"),
                row.getLong("car_id"),
                row.getInt("number"),
                row.getObject("parent_number", Integer.class),
                format.read(text).withParts(parts(row.getString("parts"))),
                text,
                row.getLong("author_id"),
                row.getString("author"),
                row.getString("reason"),
                row.getObject("saved_at", OffsetDateTime.class).toInstant());
    }
}

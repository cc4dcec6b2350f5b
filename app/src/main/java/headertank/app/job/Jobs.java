package headertank.app.job;

import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.gate.Gate;
import headertank.app.gate.Step;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Opens jobs, changes them and closes them; each deed leaves a row that stays. */
@Service
public class Jobs {

    private final JdbcClient jdbc;
    private final Queue queue;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;
    private final Gate gate;

    Jobs(JdbcClient jdbc, Queue queue, CurrentUser user, AuditTrail audit, FormKeys forms, Gate gate) {
        this.jdbc = jdbc;
        this.queue = queue;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
        this.gate = gate;
    }

    /** Opens a job for a car; returns its id. */
    @Transactional
    public long open(long carId, String asked, LocalDate promisedOn) {
        return open(carId, asked, promisedOn, UUID.randomUUID());
    }

    /** The same from a form. */
    @Transactional
    public long open(long carId, String asked, LocalDate promisedOn, UUID formKey) {
        return forms.once(user.shopId(), formKey, "job", carId + " " + asked + " " + promisedOn, () -> {
            gate.hold(carId);
            long id = insert(user.shopId(), user.accountId(), carId, asked, promisedOn);
            audit.record("job.opened", "job", id, "car " + carId);
            return id;
        });
    }

    /** For the demo shop. */
    @Transactional
    public long openFor(long shop, long account, long carId, String asked, LocalDate promisedOn) {
        long id = insert(shop, account, carId, asked, promisedOn);
        audit.recordByProgram(shop, "job.opened", "job", id, "car " + carId);
        return id;
    }

    private long insert(long shop, long account, long carId, String asked, LocalDate promisedOn) {
        long id = jdbc.sql("""
                        insert into job (shop_id, car_id, asked, promised_on, opened_by)
                        values (:shop, :car, :asked, :promised, :who) returning id""")
                .param("shop", shop)
                .param("car", carId)
                .param("asked", asked)
                .param("promised", promisedOn)
                .param("who", account)
                .query(Long.class)
                .single();
        remember(shop, account, id, Job.Kind.OPENED, "");
        return id;
    }

    /** A job of this shop with its history. */
    @Transactional(readOnly = true)
    Job byId(long id) {
        JobLine line = queue.line(id).orElseThrow(() -> new NotFoundException("job", id));
        int version = jdbc.sql("select version from job where id = :id and shop_id = :shop")
                .param("id", id)
                .param("shop", user.shopId())
                .query(Integer.class)
                .single();
        List<Job.Event> events = jdbc.sql("""
                        select e.kind, e.asked, e.promised_on, e.reason, a.name, e.at
                        from job_event e join account a on a.id = e.account_id
                        where e.job_id = :id and e.shop_id = :shop order by e.id""")
                .param("id", id)
                .param("shop", user.shopId())
                .query(Jobs::event)
                .list();
        return new Job(line, version, events);
    }

    /** @throws ConflictException when somebody else has changed the job since the form was filled, or closed it */
    @Transactional
    void change(long id, String asked, LocalDate promisedOn, int version, UUID key) {
        deed(
                id,
                key,
                version,
                Job.Kind.CHANGED,
                "",
                "asked = :asked, promised_on = :promised",
                Map.of("asked", asked, "promised", promisedOn));
    }

    /** Something has to be waited for. */
    @Transactional
    void pause(long id, String reason, int version, UUID key) {
        deed(id, key, version, Job.Kind.PAUSED, reason, "paused = true", Map.of());
    }

    @Transactional
    void resume(long id, int version, UUID key) {
        deed(id, key, version, Job.Kind.RESUMED, "", "paused = false", Map.of());
    }

    /** Nothing more is done. */
    @Transactional
    void callOff(long id, String reason, int version, UUID key) {
        deed(
                id,
                key,
                version,
                Job.Kind.CALLED_OFF,
                reason,
                "paused = false, closed_as = 'CALLED_OFF', closed_at = clock_timestamp()",
                Map.of());
    }

    /** The customer has the car: the last click. */
    @Transactional
    void handOver(long id, int version, UUID key) {
        deed(
                id,
                key,
                version,
                Job.Kind.HANDED_OVER,
                "",
                "paused = false, closed_as = 'HANDED_OVER', closed_at = clock_timestamp()",
                Map.of());
    }

    /** The last click was none: the job is open again, as if the car had never left. */
    @Transactional
    void takeBack(long id, String reason, int version, UUID key) {
        deed(id, key, version, Job.Kind.TAKEN_BACK, reason, "closed_as = null, closed_at = null", Map.of());
    }

    /** What the state machine calls a deed; a change of words is none of its business. */
    private static Optional<Step> step(Job.Kind kind) {
        return switch (kind) {
            case OPENED -> Optional.of(Step.OPEN_JOB);
            case CHANGED -> Optional.empty();
            case PAUSED -> Optional.of(Step.PAUSE);
            case RESUMED -> Optional.of(Step.RESUME);
            case HANDED_OVER -> Optional.of(Step.HAND_OVER);
            case TAKEN_BACK -> Optional.of(Step.TAKE_BACK);
            case CALLED_OFF -> Optional.of(Step.CALL_OFF);
        };
    }

    private void deed(
            long id, UUID key, int version, Job.Kind kind, String reason, String set, Map<String, Object> values) {
        String said = id + " " + kind + " " + version + " " + reason + " " + values;
        forms.once(user.shopId(), key, "job_event", said, () -> deed(id, version, kind, reason, set, values));
    }

    private long deed(long id, int version, Job.Kind kind, String reason, String set, Map<String, Object> values) {
        long car = queue.line(id)
                .orElseThrow(() -> new NotFoundException("job", id))
                .carId();
        gate.hold(car);
        step(kind).ifPresent(step -> Gate.require(step, gate.ofJob(id)));
        int changed = jdbc.sql("update job set version = version + 1, " + set
                        + " where id = :id and shop_id = :shop and version = :version and closed_as is "
                        + (kind == Job.Kind.TAKEN_BACK ? "not null" : "null"))
                .param("id", id)
                .param("shop", user.shopId())
                .param("version", version)
                .params(values)
                .update();
        if (changed == 0) {
            throw new ConflictException("job.changed-meanwhile");
        }
        remember(user.shopId(), user.accountId(), id, kind, reason);
        audit.record("job." + kind.name().toLowerCase(Locale.ROOT).replace('_', '-'), "job", id, "");
        return id;
    }

    private void remember(long shop, long account, long id, Job.Kind kind, String reason) {
        jdbc.sql("""
                        insert into job_event (shop_id, job_id, kind, asked, promised_on, reason, account_id)
                        select shop_id, id, :kind, asked, promised_on, :reason, :who from job where id = :id and shop_id = :shop""")
                .param("kind", kind.name())
                .param("reason", reason)
                .param("who", account)
                .param("id", id)
                .param("shop", shop)
                .update();
    }

    private static Job.Event event(ResultSet row, int n) throws SQLException {
        return new Job.Event(
                Job.Kind.valueOf(row.getString("kind")),
                row.getString("asked"),
                row.getObject("promised_on", LocalDate.class),
                row.getString("reason"),
                row.getString("name"),
                row.getTimestamp("at").toInstant());
    }
}

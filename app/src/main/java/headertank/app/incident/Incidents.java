package headertank.app.incident;

import headertank.app.audit.AuditTrail;
import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.calc.sensor.SensorPlacement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what was seen when a car ran hot. */
@Service
@Transactional(readOnly = true)
public class Incidents {

    private static final int CHECKS_LOOKED_AT = 500;

    private static final String SELECT = """
            select i.id, i.car_id, i.revision_id, r.number, i.compared_check_run_id, i.occurred_at, i.duty, i.doing,
                   i.ambient_k, i.reading_k, i.reading_place, i.note, a.name as reporter, i.reported_at
            from incident i join revision r on r.id = i.revision_id join account a on a.id = i.reporter_id
            where i.shop_id = :shop
            """;

    private final JdbcClient jdbc;
    private final Revisions revisions;
    private final Checks checks;
    private final CarSearch cars;
    private final CurrentUser user;
    private final AuditTrail audit;

    Incidents(JdbcClient jdbc, Revisions revisions, Checks checks, CarSearch cars, CurrentUser user, AuditTrail audit) {
        this.jdbc = jdbc;
        this.revisions = revisions;
        this.checks = checks;
        this.cars = cars;
        this.user = user;
        this.audit = audit;
    }

    /** Notes that a car ran hot; returns the report's id. */
    @Transactional
    public long report(long carId, IncidentForm form, IncidentEntry entry) {
        Revision revision = revisions.of(carId, form.revision());
        long id = jdbc.sql("""
                        insert into incident (shop_id, car_id, revision_id, compared_check_run_id, occurred_at, duty, doing,
                                              ambient_k, reading_k, reading_place, note, reporter_id)
                        values (:shop, :car, :revision, :check, :at, :duty, :doing, :ambient, :reading, :place, :note, :who)
                        returning id""")
                .param("shop", user.shopId())
                .param("car", carId)
                .param("revision", revision.id())
                .param(
                        "check",
                        lastGood(carId, form.duty(), entry.occurredAt())
                                .map(CheckLine::id)
                                .orElse(null),
                        Types.BIGINT)
                .param("at", OffsetDateTime.ofInstant(entry.occurredAt(), ZoneOffset.UTC))
                .param("duty", form.duty())
                .param("doing", form.doing())
                .param("ambient", entry.ambientK().orElse(null), Types.DOUBLE)
                .param("reading", entry.readingK())
                .param("place", form.place().name())
                .param("note", form.note())
                .param("who", user.accountId())
                .query(Long.class)
                .single();
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
        return jdbc.sql(SELECT + " and i.id = :id")
                .param("shop", user.shopId())
                .param("id", id)
                .query(Incidents::incident)
                .optional()
                .orElseThrow(() -> new NotFoundException("incident", id));
    }

    /** Reports about a car, newest first. */
    public List<Incident> ofCar(long carId, int limit) {
        cars.car(carId);
        return jdbc.sql(SELECT + " and i.car_id = :car order by i.occurred_at desc, i.id desc limit :limit")
                .param("shop", user.shopId())
                .param("car", carId)
                .param("limit", limit)
                .query(Incidents::incident)
                .list();
    }

    private static Incident incident(ResultSet row, int n) throws SQLException {
        return new Incident(
                row.getLong("id"),
                row.getLong("car_id"),
                row.getLong("revision_id"),
                row.getInt("number"),
                Optional.ofNullable(row.getObject("compared_check_run_id", Long.class)),
                row.getTimestamp("occurred_at").toInstant(),
                row.getString("duty"),
                row.getString("doing"),
                Optional.ofNullable(row.getObject("ambient_k", Double.class)),
                row.getDouble("reading_k"),
                SensorPlacement.valueOf(row.getString("reading_place")),
                row.getString("note"),
                row.getString("reporter"),
                row.getTimestamp("reported_at").toInstant());
    }
}

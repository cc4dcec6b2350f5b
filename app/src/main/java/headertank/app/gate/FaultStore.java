package headertank.app.gate;

import headertank.app.audit.AuditTrail;
import headertank.app.gate.CarFault.Clearing;
import headertank.app.gate.CarFault.How;
import headertank.app.gate.CarFault.Reading;
import headertank.app.shop.CurrentUser;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The faults of the current shop's cars: they follow a car from check to check until each is cleared. Rows are only added. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class FaultStore {

    private static final String SELECT = """
            select f.id, f.check_run_id, r.number, f.kind, f.item, f.note, f.value_si, f.expected_si, f.low_si, f.high_si,
                   f.opened_at, a.name as author, z.id as clearing_id, z.how, z.reason, z.cleared_at, b.name as cleared_by,
                   n.number as cleared_number,
                   exists (select 1 from revision w where w.car_id = f.car_id and w.number > r.number) as older
            from car_fault f
            join check_run k on k.id = f.check_run_id
            join revision r on r.id = k.revision_id
            join account a on a.id = f.author_id
            left join fault_clearing z on z.fault_id = f.id
            left join account b on b.id = z.author_id
            left join revision n on n.id = z.revision_id
            where f.shop_id = :shop
            """;

    private final JdbcClient jdbc;
    private final CurrentUser user;
    private final AuditTrail audit;

    FaultStore(JdbcClient jdbc, CurrentUser user, AuditTrail audit) {
        this.jdbc = jdbc;
        this.user = user;
        this.audit = audit;
    }

    /** All that was ever found on a car, the oldest first. */
    public List<CarFault> ofCar(long carId) {
        return jdbc.sql(SELECT + " and f.car_id = :car order by f.id")
                .param("shop", user.shopId())
                .param("car", carId)
                .query(FaultStore::fault)
                .list();
    }

    /** What is open on a car, the oldest first. */
    public List<CarFault> open(long carId) {
        return ofCar(carId).stream().filter(CarFault::isOpen).toList();
    }

    /** An item at which somebody has found something wrong. */
    public void found(long carId, long checkId, String item, long measurementId, String note) {
        add(carId, checkId, FaultKind.FOUND, item, measurementId, note, Optional.empty());
    }

    /** A reading outside what is expected; once for each entry. */
    public void outside(long carId, long checkId, String item, long measurementId, String note, Reading reading) {
        boolean known = jdbc.sql("select exists (select 1 from car_fault where measurement_id = :id)")
                .param("id", measurementId)
                .query(Boolean.class)
                .single();
        if (!known) {
            add(carId, checkId, FaultKind.READING, item, measurementId, note, Optional.of(reading));
        }
    }

    /** The whole car goes back. */
    public void sentBack(long carId, long checkId, String reason) {
        add(carId, checkId, FaultKind.SENT_BACK, "", null, reason, Optional.empty());
    }

    private void add(
            long carId,
            long checkId,
            FaultKind kind,
            String item,
            Long measurementId,
            String note,
            Optional<Reading> reading) {
        long id = jdbc.sql("""
                        insert into car_fault (shop_id, car_id, check_run_id, kind, item, measurement_id, note, value_si, expected_si, low_si,
                                               high_si, author_id)
                        values (:shop, :car, :check, :kind, :item, :measurement, :note, :value, :expected, :low, :high,
                                :author)
                        returning id""")
                .param("shop", user.shopId())
                .param("car", carId)
                .param("check", checkId)
                .param("kind", kind.name())
                .param("item", item)
                .param("measurement", measurementId, Types.BIGINT)
                .param("note", note)
                .param("value", reading.map(Reading::value).orElse(null), Types.DOUBLE)
                .param("expected", reading.map(Reading::expected).orElse(null), Types.DOUBLE)
                .param("low", reading.map(Reading::low).orElse(null), Types.DOUBLE)
                .param("high", reading.map(Reading::high).orElse(null), Types.DOUBLE)
                .param("author", user.accountId())
                .query(Long.class)
                .single();
        audit.record("fault.opened", "car_fault", id, kind.name());
    }

    /** Clears a fault by a later reading of its item. */
    public void clearByReading(long faultId, long measurementId) {
        clear(faultId, How.READING, measurementId, null, "");
    }

    /** Clears a fault by the newest revision of its car. */
    public void clearByRevision(long faultId, long revisionId) {
        clear(faultId, How.REVISION, null, revisionId, "");
    }

    /** Clears a fault by a reason. */
    public void clearByReason(long faultId, String reason) {
        clear(faultId, How.REASON, null, null, reason);
    }

    private void clear(long faultId, How how, Long measurementId, Long revisionId, String reason) {
        jdbc.sql("""
                        insert into fault_clearing (shop_id, fault_id, how, measurement_id, revision_id, reason, author_id)
                        values (:shop, :fault, :how, :measurement, :revision, :reason, :author)""")
                .param("shop", user.shopId())
                .param("fault", faultId)
                .param("how", how.name())
                .param("measurement", measurementId, Types.BIGINT)
                .param("revision", revisionId, Types.BIGINT)
                .param("reason", reason)
                .param("author", user.accountId())
                .update();
        audit.record("fault.cleared", "car_fault", faultId, how.name());
    }

    private static CarFault fault(ResultSet row, int n) throws SQLException {
        FaultKind kind = FaultKind.valueOf(row.getString("kind"));
        return new CarFault(
                row.getLong("id"),
                row.getLong("check_run_id"),
                row.getInt("number"),
                kind,
                row.getString("item"),
                row.getString("note"),
                kind == FaultKind.READING
                        ? Optional.of(new Reading(
                                row.getDouble("value_si"),
                                row.getDouble("expected_si"),
                                row.getDouble("low_si"),
                                row.getDouble("high_si")))
                        : Optional.empty(),
                row.getBoolean("older"),
                row.getString("author"),
                row.getTimestamp("opened_at").toInstant(),
                row.getObject("clearing_id") == null ? Optional.empty() : Optional.of(clearing(row)));
    }

    private static Clearing clearing(ResultSet row) throws SQLException {
        Instant at = row.getTimestamp("cleared_at").toInstant();
        return new Clearing(
                How.valueOf(row.getString("how")),
                row.getInt("cleared_number"),
                row.getString("reason"),
                row.getString("cleared_by"),
                at);
    }
}

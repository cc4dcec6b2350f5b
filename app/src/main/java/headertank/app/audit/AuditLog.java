package headertank.app.audit;

import headertank.app.shop.CurrentUser;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Reads the audit trail of the current shop, newest first. */
@Component
@Transactional(readOnly = true)
class AuditLog {

    /** Lines of one page. */
    static final int PAGE = 100;

    private static final String ENTRIES = """
            select e.id, e.at, a.name as who, e.action, e.subject_type, e.subject_id, e.detail
            from audit_entry e left join account a on a.id = e.account_id
            where e.shop_id = :shop and e.id < :before
              and (:account = 0 or e.account_id = :account) and (:action = '' or e.action = :action)
              and e.at >= :from and e.at < :until
            order by e.id desc
            """;
    private static final LocalDate BEFORE_ALL = LocalDate.of(1, 1, 1);
    private static final LocalDate AFTER_ALL = LocalDate.of(9999, 1, 1);

    private final JdbcClient jdbc;
    private final CurrentUser user;

    AuditLog(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /** @param before id that the page begins behind */
    List<AuditEntry> page(AuditFilter filter, long before, ZoneId zone) {
        return query(ENTRIES + " limit " + (PAGE + 1), filter, before, zone)
                .query(AuditLog::entry)
                .list();
    }

    /** Every line that fits, one at a time: a trail of years is not held in memory. */
    void each(AuditFilter filter, ZoneId zone, Consumer<AuditEntry> taker) {
        query(ENTRIES, filter, Long.MAX_VALUE, zone).query((ResultSet row) -> taker.accept(entry(row, 0)));
    }

    private StatementSpec query(String sql, AuditFilter filter, long before, ZoneId zone) {
        LocalDate from = filter.from() == null ? BEFORE_ALL : filter.from();
        LocalDate until = filter.until() == null ? AFTER_ALL : filter.until().plusDays(1);
        return jdbc.sql(sql)
                .param("shop", user.shopId())
                .param("before", before)
                .param("account", filter.account() == null ? 0 : filter.account())
                .param("action", filter.action())
                .param("from", from.atStartOfDay(zone).toOffsetDateTime())
                .param("until", until.atStartOfDay(zone).toOffsetDateTime());
    }

    /** What has been done here at all, for the choices of the filter. */
    List<String> actions() {
        return jdbc.sql("select distinct action from audit_entry where shop_id = :shop order by action")
                .param("shop", user.shopId())
                .query(String.class)
                .list();
    }

    /** Somebody who may have done something. */
    record Person(long id, String name) {}

    List<Person> people() {
        return jdbc.sql("select id, name from account where shop_id = :shop order by name, id")
                .param("shop", user.shopId())
                .query((row, n) -> new Person(row.getLong("id"), row.getString("name")))
                .list();
    }

    private static AuditEntry entry(ResultSet row, int n) throws SQLException {
        return new AuditEntry(
                row.getLong("id"),
                row.getTimestamp("at").toInstant(),
                Optional.ofNullable(row.getString("who")),
                row.getString("action"),
                row.getString("subject_type"),
                row.getObject("subject_id", Long.class),
                row.getString("detail"));
    }
}

package headertank.app.carspec.history;

import headertank.app.shop.CurrentUser;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What happened to a car: revisions, checks, sign-offs and overheatings on one line of time. */
@Component("timeline")
@Transactional(readOnly = true)
public class Timeline {

    /** The kinds of event. */
    public enum Kind {
        REVISION,
        CHECK,
        SIGN_OFF,
        INCIDENT
    }

    /**
     * One event.
     *
     * @param id of the record that tells more
     * @param text reason, decision or what the car was doing
     * @param duties ids of the duties of a check
     * @param outOfDate why a check no longer holds, as tokens; empty while it does
     */
    public record Event(
            Kind kind,
            long id,
            int revisionNumber,
            Instant at,
            String who,
            String text,
            List<String> duties,
            List<String> outOfDate) {

        /** Address of the page that tells more. */
        public String path(long carId) {
            return switch (kind) {
                case REVISION -> "/cars/" + carId + "/revisions/" + revisionNumber;
                case CHECK, SIGN_OFF -> "/checks/" + id;
                case INCIDENT -> "/incidents/" + id;
            };
        }
    }

    private static final String EVENTS = """
            select 'REVISION' as kind, r.id, r.number, r.saved_at as at, a.name as who, r.reason as text, '' as duties, '' as why
            from revision r join account a on a.id = r.author_id
            where r.shop_id = :shop and r.car_id = :car
            union all
            select 'CHECK', c.id, r.number, c.created_at, a.name, '', c.duties, k.why
            from check_run c join revision r on r.id = c.revision_id join account a on a.id = c.author_id
                 join check_currency k on k.check_run_id = c.id
            where c.shop_id = :shop and r.car_id = :car
            union all
            select 'SIGN_OFF', c.id, r.number, s.signed_at, a.name, s.decision, c.duties, k.why
            from sign_off s join check_run c on c.id = s.check_run_id join revision r on r.id = c.revision_id
                 join account a on a.id = s.signer_id join check_currency k on k.check_run_id = c.id
            where s.shop_id = :shop and r.car_id = :car
            union all
            select 'INCIDENT', i.id, r.number, i.occurred_at, a.name, i.doing, i.duty, ''
            from incident i join revision r on r.id = i.revision_id join account a on a.id = i.reporter_id
            where i.shop_id = :shop and i.car_id = :car
              and not exists (select 1 from incident later where later.replaces_id = i.id)
            order by at desc, id desc limit :limit
            """;

    private final JdbcClient jdbc;
    private final CurrentUser user;

    Timeline(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /** Events of a car, newest first. */
    public List<Event> of(long carId, int atMost) {
        return jdbc.sql(EVENTS)
                .param("shop", user.shopId())
                .param("car", carId)
                .param("limit", atMost)
                .query(Timeline::event)
                .list();
    }

    private static Event event(ResultSet row, int n) throws SQLException {
        return new Event(
                Kind.valueOf(row.getString("kind")),
                row.getLong("id"),
                row.getInt("number"),
                row.getObject("at", OffsetDateTime.class).toInstant(),
                row.getString("who"),
                row.getString("text"),
                words(row.getString("duties")),
                words(row.getString("why")));
    }

    private static List<String> words(String joined) {
        return Arrays.stream(joined.split(","))
                .map(String::strip)
                .filter(w -> !w.isEmpty())
                .toList();
    }
}

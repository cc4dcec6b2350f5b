package headertank.app.job;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.Shops;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What the owner looks after: checks that nobody has signed, and cars that were changed and not rated again. */
@Component
@Transactional(readOnly = true)
class Unfinished {

    private final JdbcClient jdbc;
    private final CurrentUser user;
    private final Shops shops;

    Unfinished(JdbcClient jdbc, CurrentUser user, Shops shops) {
        this.jdbc = jdbc;
        this.user = user;
        this.shops = shops;
    }

    /** A changed car is to be rated again within so many days, as the shop has set. */
    int recheckDays() {
        return shops.current().recheckDays();
    }

    /** A check nobody has signed, the newest of its car. */
    record Unsigned(
            long checkId,
            long carId,
            String plate,
            String carTitle,
            int revisionNumber,
            String authorName,
            Instant ratedAt) {}

    /**
     * A car that was changed after it was signed.
     *
     * @param signedNumber the newest revision that is signed
     * @param newestNumber the newest there is
     * @param changedAt when the newest was saved
     */
    record Overdue(long carId, String plate, String carTitle, int signedNumber, int newestNumber, Instant changedAt) {}

    /** Newest first, from behind a check; at most {@code limit}. */
    List<Unsigned> unsigned(long beforeCheck, int limit) {
        return jdbc.sql("""
                        select k.id, r.car_id, c.plate, c.make, c.model, c.model_year, r.number, a.name as author, k.created_at
                        from check_run k
                        join revision r on r.id = k.revision_id
                        join car c on c.id = r.car_id
                        join account a on a.id = k.author_id
                        where k.shop_id = :shop and k.id < :before
                          and not exists (select 1 from sign_off s where s.check_run_id = k.id)
                          and not exists (select 1 from revision n join check_run later on later.revision_id = n.id
                                          where n.car_id = r.car_id and later.id > k.id)
                        order by k.id desc limit :limit""")
                .param("shop", user.shopId())
                .param("before", beforeCheck)
                .param("limit", limit)
                .query((row, n) -> new Unsigned(
                        row.getLong("id"),
                        row.getLong("car_id"),
                        row.getString("plate"),
                        Queue.carTitle(row),
                        row.getInt("number"),
                        row.getString("author"),
                        row.getTimestamp("created_at").toInstant()))
                .list();
    }

    /**
     * Cars whose newest revision is older than the days that the shop gives and is not signed, though an earlier one is; the longest
     * overdue first, from behind a place in the list; at most {@code limit}.
     */
    List<Overdue> overdue(Instant now, Instant after, long afterCar, int limit) {
        return jdbc.sql("""
                        select r.car_id, c.plate, c.make, c.model, c.model_year, r.number, r.saved_at, signed.number as signed
                        from revision r
                        join car c on c.id = r.car_id
                        cross join lateral (
                          select max(q.number) as number
                          from revision q join check_run k on k.revision_id = q.id join sign_off s on s.check_run_id = k.id
                          where q.car_id = r.car_id) signed
                        where r.shop_id = :shop and r.saved_at < :changedBefore and (r.saved_at, r.car_id) > (:after, :afterCar)
                          and not exists (select 1 from revision n where n.car_id = r.car_id and n.number > r.number)
                          and signed.number < r.number
                        order by r.saved_at, r.car_id limit :limit""")
                .param("shop", user.shopId())
                .param("changedBefore", utc(now.minus(recheckDays(), ChronoUnit.DAYS)))
                .param("after", utc(after))
                .param("afterCar", afterCar)
                .param("limit", limit)
                .query((row, n) -> new Overdue(
                        row.getLong("car_id"),
                        row.getString("plate"),
                        Queue.carTitle(row),
                        row.getInt("signed"),
                        row.getInt("number"),
                        row.getTimestamp("saved_at").toInstant()))
                .list();
    }

    private static OffsetDateTime utc(Instant instant) {
        return OffsetDateTime.ofInstant(instant, ZoneOffset.UTC);
    }
}

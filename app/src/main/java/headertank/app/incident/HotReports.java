package headertank.app.incident;

import headertank.app.car.CarLine;
import headertank.app.shop.CurrentUser;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The reports of all cars of the shop, so that what happens to several of them is seen. */
@Component
@Transactional(readOnly = true)
class HotReports {

    /** Lines of one page. */
    static final int PAGE = 50;

    /**
     * A report in the list.
     *
     * @param occurredAt when the car ran hot
     * @param duty id of a duty, empty when none fits
     * @param readingK what the gauge showed [K]
     * @param ambientK air of that day [K]
     * @param newestSince number of a revision that is newer than the one that ran hot; empty while nothing was changed
     */
    record Line(
            long id,
            long carId,
            String plate,
            String carTitle,
            Instant occurredAt,
            String duty,
            String doing,
            double readingK,
            Optional<Double> ambientK,
            int revisionNumber,
            Optional<Integer> newestSince) {}

    private static final String FOUND = """
            from incident i
            join revision r on r.id = i.revision_id
            join car c on c.id = i.car_id
            cross join lateral (select max(n.number) as number from revision n where n.car_id = i.car_id) newest
            where i.shop_id = :shop
              and (btrim(:words) = '' or i.id in (select all_words('incidents_with', :shop, :words)))
            """;

    private final JdbcClient jdbc;
    private final CurrentUser user;

    HotReports(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /** Newest first; one line more than a page when there are more. */
    List<Line> page(String words, int page) {
        return jdbc.sql("""
                        select i.id, i.car_id, c.plate, c.make, c.model, c.model_year, i.occurred_at, i.duty, i.doing,
                               i.reading_k, i.ambient_k, r.number, newest.number as newest
                        """ + FOUND + " order by i.occurred_at desc, i.id desc limit :limit offset :offset")
                .param("shop", user.shopId())
                .param("words", words)
                .param("limit", PAGE + 1)
                .param("offset", page * PAGE)
                .query(HotReports::line)
                .list();
    }

    int count(String words) {
        return jdbc.sql("select count(*) " + FOUND)
                .param("shop", user.shopId())
                .param("words", words)
                .query(Integer.class)
                .single();
    }

    private static Line line(ResultSet row, int n) throws SQLException {
        int number = row.getInt("number");
        int newest = row.getInt("newest");
        return new Line(
                row.getLong("id"),
                row.getLong("car_id"),
                row.getString("plate"),
                CarLine.title(
                        row.getString("make"), row.getString("model"), row.getObject("model_year", Integer.class)),
                row.getTimestamp("occurred_at").toInstant(),
                row.getString("duty"),
                row.getString("doing"),
                row.getDouble("reading_k"),
                Optional.ofNullable(row.getObject("ambient_k", Double.class)),
                number,
                newest > number ? Optional.of(newest) : Optional.empty());
    }
}

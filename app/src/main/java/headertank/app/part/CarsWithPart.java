package headertank.app.part;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Which cars have a part, for a recall: by their newest revision, and by an older one. */
@Component
@Transactional(readOnly = true)
public class CarsWithPart {

    /** Somebody spoke to the owner of a car. */
    public record Reached(String who, Instant at) {}

    /**
     * A car that has, or had, the part.
     *
     * @param owner name of the customer, empty for those who may not see it; phone and mail likewise
     * @param revision the newest that names the part
     * @param newest the car's newest revision
     * @param changed fields in which that revision differs from the catalogue
     * @param reached who reached the owner, and when; empty while nobody has
     */
    public record Line(
            long carId,
            String plate,
            String title,
            String owner,
            String phone,
            String email,
            int revision,
            int newest,
            List<BuildField> changed,
            Optional<Reached> reached) {

        /** Whether the part is on the car now, as far as its revisions tell. */
        public boolean now() {
            return revision == newest;
        }
    }

    private static final String CARS = """
            select * from (
              select distinct on (c.id) c.id, c.plate, c.make, c.model, c.model_year, u.name, u.phone, u.email,
                     r.number, f.changed_fields,
                     (select max(n.number) from revision n where n.car_id = c.id) as newest,
                     reached.name as reached_by, reached.at as reached_at
              from fitted_part f join revision r on r.id = f.revision_id
                   join car c on c.id = r.car_id join customer u on u.id = c.customer_id
                   left join lateral (
                     select a.name, last.at from (select k.reached, k.account_id, k.at from recall_contact k
                                                  where k.part_id = f.part_id and k.car_id = c.id order by k.id desc limit 1) last
                     join account a on a.id = last.account_id where last.reached) reached on true
              where f.shop_id = :shop and f.part_id = :part
              order by c.id, r.number desc) found
            order by plate, id
            """;

    private final JdbcClient jdbc;
    private final CurrentUser user;

    public CarsWithPart(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /** Whether the current user is shown whose cars they are. */
    boolean ownersShown() {
        return user.has(Role.FRONT_DESK) || user.has(Role.OWNER);
    }

    public List<Line> of(long partId) {
        boolean owners = ownersShown();
        return jdbc.sql(CARS)
                .param("shop", user.shopId())
                .param("part", partId)
                .query((row, n) -> line(row, owners))
                .list();
    }

    private static Line line(ResultSet row, boolean owners) throws SQLException {
        Integer year = row.getObject("model_year", Integer.class);
        String title = row.getString("make") + " " + row.getString("model") + (year == null ? "" : " " + year);
        return new Line(
                row.getLong("id"),
                row.getString("plate"),
                title.strip(),
                owners ? row.getString("name") : "",
                owners ? row.getString("phone") : "",
                owners ? row.getString("email") : "",
                row.getInt("number"),
                row.getInt("newest"),
                Arrays.stream(row.getString("changed_fields").split(","))
                        .flatMap(key -> BuildField.ofKey(key).stream())
                        .toList(),
                reached(row));
    }

    private static Optional<Reached> reached(ResultSet row) throws SQLException {
        String who = row.getString("reached_by");
        return who == null
                ? Optional.empty()
                : Optional.of(new Reached(who, row.getTimestamp("reached_at").toInstant()));
    }
}

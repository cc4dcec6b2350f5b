package headertank.app.part;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Which cars have a part, for a recall: by their newest revision, and by an older one. */
@Component
@Transactional(readOnly = true)
public class CarsWithPart {

    /**
     * A car that has, or had, the part.
     *
     * @param owner name of the customer, empty for those who may not see it; phone and mail likewise
     * @param revision the newest that names the part
     * @param newest the car's newest revision
     * @param changed fields in which that revision differs from the catalogue
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
            List<BuildField> changed) {

        /** Whether the part is on the car now, as far as its revisions tell. */
        public boolean now() {
            return revision == newest;
        }
    }

    private static final String CARS = """
            select * from (
              select distinct on (c.id) c.id, c.plate, c.make, c.model, c.model_year, u.name, u.phone, u.email,
                     r.number, f.changed_fields,
                     (select max(n.number) from revision n where n.car_id = c.id) as newest
              from fitted_part f join revision r on r.id = f.revision_id
                   join car c on c.id = r.car_id join customer u on u.id = c.customer_id
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
                        .toList());
    }
}

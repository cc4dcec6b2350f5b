package headertank.app.shop;

import headertank.app.unit.UnitSystem;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Finds and founds shops. */
@Component
public class Shops {

    private final JdbcClient jdbc;
    private final CurrentUser user;

    Shops(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /** The shop of whoever has signed in. */
    public Shop current() {
        return byId(user.shopId());
    }

    /** For page headers: empty when nobody has signed in. Fragments call {@code @shops.currentIfAny()}. */
    public Optional<Shop> currentIfAny() {
        return user.member().map(m -> byId(m.shopId()));
    }

    public Shop byId(long id) {
        return jdbc.sql("select id, name, unit_system, invented, language, paper, recheck_days, thresholds, figures, "
                        + "settings_version from shop where id = :id")
                .param("id", id)
                .query((row, n) -> new Shop(
                        row.getLong("id"),
                        row.getString("name"),
                        UnitSystem.valueOf(row.getString("unit_system")),
                        row.getBoolean("invented"),
                        row.getString("language"),
                        Paper.valueOf(row.getString("paper")),
                        row.getInt("recheck_days"),
                        row.getString("thresholds"),
                        row.getString("figures"),
                        row.getInt("settings_version")))
                .single();
    }

    /** Founds a shop; returns its id. */
    public long found(String name, boolean invented) {
        return jdbc.sql("insert into shop (name, invented) values (:name, :invented) returning id")
                .param("name", name)
                .param("invented", invented)
                .query(Long.class)
                .single();
    }
}

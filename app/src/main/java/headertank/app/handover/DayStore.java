package headertank.app.handover;

import headertank.app.handover.item.WorkshopDay;
import headertank.calc.result.IdleExpectation;
import headertank.calc.result.IdleExpectation.Band;
import headertank.calc.result.IdleExpectation.Figure;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of days with their expected readings. Every question names the shop. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class DayStore {

    private final JdbcClient jdbc;

    DayStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Returns the row's id. */
    long insert(long shop, long check, long author, IdleExpectation expected, String version) {
        long id = jdbc.sql("""
                        insert into handover_day (shop_id, check_run_id, ambient_k, calc_core_version, author_id)
                        values (:shop, :check, :ambient, :version, :author) returning id""")
                .param("shop", shop)
                .param("check", check)
                .param("ambient", expected.ambientK())
                .param("version", version)
                .param("author", author)
                .query(Long.class)
                .single();
        expected.bands().forEach((figure, band) -> insert(id, figure, band));
        return id;
    }

    private void insert(long day, Figure figure, Band band) {
        jdbc.sql("insert into expected_reading (handover_day_id, figure, expected, low, high) "
                        + "values (:day, :figure, :expected, :low, :high)")
                .param("day", day)
                .param("figure", figure.name())
                .param("expected", band.expected())
                .param("low", band.low())
                .param("high", band.high())
                .update();
    }

    Optional<WorkshopDay> newest(long shop, long check) {
        return jdbc.sql("""
                        select d.id, d.ambient_k, d.set_at, a.name from handover_day d join account a on a.id = d.author_id
                        where d.shop_id = :shop and d.check_run_id = :check order by d.id desc limit 1""")
                .param("shop", shop)
                .param("check", check)
                .query((row, n) -> new WorkshopDay(
                        row.getLong("id"),
                        row.getDouble("ambient_k"),
                        bands(row.getLong("id")),
                        row.getString("name"),
                        row.getTimestamp("set_at").toInstant()))
                .optional();
    }

    private Map<Figure, Band> bands(long day) {
        Map<Figure, Band> bands = new EnumMap<>(Figure.class);
        jdbc.sql("select figure, expected, low, high from expected_reading where handover_day_id = :day")
                .param("day", day)
                .query(row -> {
                    Figure figure = Figure.valueOf(row.getString("figure"));
                    bands.put(figure, new Band(row.getDouble("expected"), row.getDouble("low"), row.getDouble("high")));
                });
        return bands;
    }
}

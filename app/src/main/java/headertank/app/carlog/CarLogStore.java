package headertank.app.carlog;

import headertank.app.log.file.LogSource;
import headertank.app.stored.Sha256;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of logs. Every question names the shop. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class CarLogStore {

    private static final String SELECT = """
            select l.id, l.car_id, l.name, l.reading_text, l.text_bytes, encode(l.text_sha256, 'hex') as sha256, l.row_count, l.bad_rows,
                   l.length_s, l.left_out, a.name as author, l.kept_at
            from car_log l join account a on a.id = l.author_id
            where l.shop_id = :shop and l.car_id = :car
            """;

    private final JdbcClient jdbc;

    CarLogStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The row that holds the same text, read the same way; a new one where there is none. */
    Added add(long shop, long author, long car, LogToKeep log) {
        String reading = log.reading().text();
        byte[] sha256 = Sha256.of(log.text());
        Optional<Long> added = jdbc.sql("""
                        insert into car_log (shop_id, car_id, name, gzip, text_bytes, text_sha256, reading_text, row_count, bad_rows,
                                             length_s, left_out, author_id)
                        values (:shop, :car, :name, :gzip, :bytes, :sha256, :reading, :rows, :bad, :length, :out, :author)
                        on conflict (shop_id, car_id, text_sha256, reading_text) do nothing returning id""")
                .param("shop", shop)
                .param("car", car)
                .param("name", log.name())
                .param("gzip", KeptText.gzip(log.text()))
                .param("bytes", log.text().getBytes(StandardCharsets.UTF_8).length)
                .param("sha256", sha256)
                .param("reading", reading)
                .param("rows", log.rows())
                .param("bad", log.badRows())
                .param("length", log.lengthS())
                .param("out", log.leftOut())
                .param("author", author)
                .query(Long.class)
                .optional();
        return added.map(id -> new Added(id, true)).orElseGet(() -> new Added(same(shop, car, sha256, reading), false));
    }

    /** @param isNew whether there was no such row before */
    record Added(long id, boolean isNew) {}

    private long same(long shop, long car, byte[] sha256, String reading) {
        return jdbc.sql("select id from car_log where shop_id = :shop and car_id = :car and text_sha256 = :sha256 "
                        + "and reading_text = :reading")
                .param("shop", shop)
                .param("car", car)
                .param("sha256", sha256)
                .param("reading", reading)
                .query(Long.class)
                .single();
    }

    /** Newest first. */
    List<KeptLog> ofCar(long shop, long car) {
        return jdbc.sql(SELECT + " order by l.id desc")
                .param("shop", shop)
                .param("car", car)
                .query((row, n) -> log(row))
                .list();
    }

    Optional<KeptLog> byId(long shop, long car, long id) {
        return jdbc.sql(SELECT + " and l.id = :id")
                .param("shop", shop)
                .param("car", car)
                .param("id", id)
                .query((row, n) -> log(row))
                .optional();
    }

    /** What is kept of the text. */
    LogSource text(long shop, long id) {
        return KeptText.unzipped(jdbc.sql("select gzip from car_log where shop_id = :shop and id = :id")
                .param("shop", shop)
                .param("id", id)
                .query((row, n) -> row.getBytes("gzip"))
                .single());
    }

    private static KeptLog log(ResultSet row) throws SQLException {
        return new KeptLog(
                row.getLong("id"),
                row.getLong("car_id"),
                row.getString("name"),
                LogReading.of(row.getString("reading_text")),
                row.getInt("text_bytes"),
                row.getString("sha256"),
                row.getLong("row_count"),
                row.getLong("bad_rows"),
                row.getDouble("length_s"),
                row.getInt("left_out"),
                row.getString("author"),
                row.getTimestamp("kept_at").toInstant());
    }
}

package headertank.app.audit;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Seals and the rows that they are about. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class SealStore {

    private static final int ROWS_OF_ONE = 1_000;

    private final JdbcClient jdbc;

    SealStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @param sha256 of what stands in the row, in hexadecimal digits */
    record KeptRow(String kind, long id, String sha256) {}

    /** @param sha256 of the seal itself, in hexadecimal digits */
    record Seal(long id, Instant at, List<KeptRow> rows, String sha256) {}

    List<Long> shops() {
        return jdbc.sql("select id from shop order by id").query(Long.class).list();
    }

    /** Whoever else seals this shop waits. */
    void oneAtATime(long shop) {
        jdbc.sql("select cast(pg_advisory_xact_lock(hashtext('headertank.seal'), cast(:shop as int)) as text)")
                .param("shop", (int) shop)
                .query(String.class)
                .single();
    }

    /** The oldest rows behind those that are sealed, written at least so many seconds ago. */
    List<KeptRow> unsealed(long shop, long settledS) {
        return jdbc.sql("""
                        with last as (
                          select u.kind, max(u.id) as id from seal s, unnest(s.kinds, s.ids) as u(kind, id)
                          where s.shop_id = :shop group by u.kind)
                        select k.kind, k.id, encode(k.sha256, 'hex') as sha256
                        from kept_row k left join last l on l.kind = k.kind
                        where k.shop_id = :shop and k.id > coalesce(l.id, 0)
                          and k.at <= clock_timestamp() - make_interval(secs => :settled)
                        order by k.kind, k.id limit :limit""")
                .param("shop", shop)
                .param("settled", settledS)
                .param("limit", ROWS_OF_ONE)
                .query(SealStore::row)
                .list();
    }

    private static KeptRow row(ResultSet row, int n) throws SQLException {
        return new KeptRow(row.getString("kind"), row.getLong("id"), row.getString("sha256"));
    }

    void add(long shop, List<KeptRow> rows, String sha256) {
        jdbc.sql("""
                        insert into seal (shop_id, kinds, ids, hashes, sha256)
                        select :shop, array_agg(kind order by n), array_agg(id order by n), array_agg(decode(hash, 'hex') order by n),
                               decode(:sha256, 'hex')
                        from unnest(string_to_array(:kinds, ','), string_to_array(:ids, ',')::bigint[],
                                    string_to_array(:hashes, ',')) with ordinality as r(kind, id, hash, n)""")
                .param("shop", shop)
                .param("sha256", sha256)
                .param("kinds", joined(rows, KeptRow::kind))
                .param("ids", joined(rows, r -> Long.toString(r.id())))
                .param("hashes", joined(rows, KeptRow::sha256))
                .update();
    }

    private static String joined(List<KeptRow> rows, Function<KeptRow, String> part) {
        return String.join(",", rows.stream().map(part).toList());
    }

    /** All seals of a shop, oldest first. */
    List<Seal> seals(long shop) {
        return jdbc.sql("""
                        select id, sealed_at, kinds, ids, encode(sha256, 'hex') as sha256,
                               array(select encode(h, 'hex') from unnest(hashes) with ordinality as u(h, n) order by n) as hashes
                        from seal where shop_id = :shop order by id""")
                .param("shop", shop)
                .query((row, n) -> new Seal(
                        row.getLong("id"),
                        row.getTimestamp("sealed_at").toInstant(),
                        rows(row),
                        row.getString("sha256")))
                .list();
    }

    private static List<KeptRow> rows(ResultSet row) throws SQLException {
        String[] kinds = (String[]) array(row, "kinds");
        Long[] ids = (Long[]) array(row, "ids");
        String[] hashes = (String[]) array(row, "hashes");
        List<KeptRow> rows = new ArrayList<>();
        for (int i = 0; i < kinds.length; i++) {
            rows.add(new KeptRow(kinds[i], ids[i], hashes[i]));
        }
        return rows;
    }

    private static Object array(ResultSet row, String column) throws SQLException {
        Array array = row.getArray(column);
        return array.getArray();
    }

    /** The rows as they stand now. */
    List<KeptRow> now(long shop) {
        return jdbc.sql("select kind, id, encode(sha256, 'hex') as sha256 from kept_row where shop_id = :shop")
                .param("shop", shop)
                .query(SealStore::row)
                .list();
    }
}

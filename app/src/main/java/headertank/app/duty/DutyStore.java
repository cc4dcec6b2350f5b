package headertank.app.duty;

import headertank.app.stored.Sha256;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Rows of a shop's own duties. Every question names the shop. */
@Component
class DutyStore {

    private static final String NEWEST = """
            select distinct on (d.duty_id) d.id, d.duty_id, d.number, d.csv_text, d.active, a.name as author, d.saved_at
            from duty_version d join account a on a.id = d.author_id
            where d.shop_id = :shop
            """;

    private final JdbcClient jdbc;

    DutyStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The newest version of each duty, by id. */
    List<DutyVersion> newest(long shop) {
        return jdbc.sql(NEWEST + " order by d.duty_id, d.number desc")
                .param("shop", shop)
                .query(DutyStore::version)
                .list();
    }

    Optional<DutyVersion> newest(long shop, String dutyId) {
        return jdbc.sql(NEWEST + " and d.duty_id = :duty order by d.duty_id, d.number desc")
                .param("shop", shop)
                .param("duty", dutyId)
                .query(DutyStore::version)
                .optional();
    }

    /** @throws org.springframework.dao.DuplicateKeyException when somebody else has saved this number */
    long insert(long shop, long author, String dutyId, int number, String csv, boolean active) {
        return jdbc.sql("""
                        insert into duty_version (shop_id, duty_id, number, csv_text, csv_sha256, active, author_id)
                        values (:shop, :duty, :number, :csv, :hash, :active, :author) returning id""")
                .param("shop", shop)
                .param("duty", dutyId)
                .param("number", number)
                .param("csv", csv)
                .param("hash", Sha256.of(csv))
                .param("active", active)
                .param("author", author)
                .query(Long.class)
                .single();
    }

    private static DutyVersion version(ResultSet row, int n) throws SQLException {
        return new DutyVersion(
                row.getLong("id"),
                row.getString("duty_id"),
                row.getInt("number"),
                row.getString("csv_text"),
                row.getBoolean("active"),
                row.getString("author"),
                row.getTimestamp("saved_at").toInstant());
    }
}

package headertank.app.handover.asked;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of what is asked. Every question names the shop. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class AskedItemStore {

    private static final String NEWEST = """
            select distinct on (i.duty_id, i.item) i.duty_id, i.item, i.asked, i.reason, a.name, i.set_at
            from asked_item i join account a on a.id = i.author_id
            where i.shop_id = :shop
            """;
    private static final String NEWEST_FIRST = " order by i.duty_id, i.item, i.id desc";

    private final JdbcClient jdbc;

    AskedItemStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Returns the row's id. */
    long insert(long shop, long author, String dutyId, AskedItemForm form) {
        return jdbc.sql("""
                        insert into asked_item (shop_id, duty_id, item, asked, reason, author_id)
                        values (:shop, :duty, :item, :asked, :reason, :author) returning id""")
                .param("shop", shop)
                .param("duty", dutyId)
                .param("item", form.item())
                .param("asked", form.asked())
                .param("reason", form.reason())
                .param("author", author)
                .query(Long.class)
                .single();
    }

    /** What holds now for a duty. */
    List<AskedItem> now(long shop, String dutyId) {
        return jdbc.sql(NEWEST + " and i.duty_id = :duty" + NEWEST_FIRST)
                .param("shop", shop)
                .param("duty", dutyId)
                .query(AskedItemStore::row)
                .list();
    }

    /** What held when a check was made, for all duties. */
    List<AskedItem> whenMade(long shop, long checkId) {
        return jdbc.sql(NEWEST
                        + " and i.set_at <= (select created_at from check_run where id = :check and shop_id = :shop)"
                        + NEWEST_FIRST)
                .param("shop", shop)
                .param("check", checkId)
                .query(AskedItemStore::row)
                .list();
    }

    private static AskedItem row(ResultSet row, int n) throws SQLException {
        return new AskedItem(
                row.getString("duty_id"),
                row.getString("item"),
                row.getBoolean("asked"),
                row.getString("reason"),
                row.getString("name"),
                row.getTimestamp("set_at").toInstant());
    }
}

package headertank.app.handover;

import headertank.app.handover.item.ItemOutcome;
import headertank.app.handover.item.Measurement;
import java.sql.Types;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of what was entered. Every question names the shop. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class MeasurementStore {

    private final JdbcClient jdbc;

    MeasurementStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Returns the row's id. */
    long insert(
            long shop,
            long check,
            long author,
            String item,
            ItemOutcome outcome,
            Optional<Double> valueSi,
            String typed,
            String note) {
        return jdbc.sql("""
                        insert into measurement (shop_id, check_run_id, item, outcome, value_si, typed, note, author_id)
                        values (:shop, :check, :item, :outcome, :value, :typed, :note, :author) returning id""")
                .param("shop", shop)
                .param("check", check)
                .param("item", item)
                .param("outcome", outcome.name())
                .param("value", valueSi.orElse(null), Types.DOUBLE)
                .param("typed", typed)
                .param("note", note)
                .param("author", author)
                .query(Long.class)
                .single();
    }

    /** The newest entry of each item. */
    Map<String, Measurement> newest(long shop, long check) {
        List<Measurement> rows = jdbc.sql("""
                        select distinct on (m.item) m.id, m.item, m.outcome, m.value_si, m.typed, m.note, m.stored_at, a.name
                        from measurement m join account a on a.id = m.author_id
                        where m.shop_id = :shop and m.check_run_id = :check order by m.item, m.id desc""")
                .param("shop", shop)
                .param("check", check)
                .query((row, n) -> new Measurement(
                        row.getLong("id"),
                        row.getString("item"),
                        ItemOutcome.valueOf(row.getString("outcome")),
                        Optional.ofNullable(row.getObject("value_si", Double.class)),
                        row.getString("typed"),
                        row.getString("note"),
                        row.getString("name"),
                        row.getTimestamp("stored_at").toInstant()))
                .list();
        return rows.stream().collect(Collectors.toMap(Measurement::item, m -> m));
    }
}

package headertank.app.handover;

import headertank.app.handover.HandoverDecision.OpenItem;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of last words. Every question names the shop. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class DecisionStore {

    private static final String SELECT = """
            select d.id, d.check_run_id, d.outcome, d.reason, d.decided_at, a.name
            from handover_decision d join account a on a.id = d.author_id
            """;

    private final JdbcClient jdbc;

    DecisionStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Returns the row's id.
     *
     * @param items every item of the list
     * @param open what was open, with the reasons
     */
    long insert(long shop, long check, long author, DecisionForm form, List<String> items, List<OpenItem> open) {
        long id = jdbc.sql("""
                        insert into handover_decision (shop_id, check_run_id, outcome, reason, author_id, items)
                        values (:shop, :check, :outcome, :reason, :author, :items) returning id""")
                .param("shop", shop)
                .param("check", check)
                .param("outcome", form.outcome().name())
                .param("reason", form.reason())
                .param("author", author)
                .param("items", String.join(",", items))
                .query(Long.class)
                .single();
        open.forEach(o -> jdbc.sql(
                        "insert into handover_open_item (handover_decision_id, item, reason) values (:d, :item, :reason)")
                .param("d", id)
                .param("item", o.item())
                .param("reason", o.reason())
                .update());
        return id;
    }

    /** Newest first. */
    List<HandoverDecision> ofCheck(long shop, long check) {
        return jdbc.sql(SELECT + " where d.shop_id = :shop and d.check_run_id = :check order by d.id desc")
                .param("shop", shop)
                .param("check", check)
                .query((row, n) -> new HandoverDecision(
                        row.getLong("id"),
                        row.getLong("check_run_id"),
                        HandoverOutcome.valueOf(row.getString("outcome")),
                        row.getString("reason"),
                        openItems(row.getLong("id")),
                        row.getString("name"),
                        row.getTimestamp("decided_at").toInstant()))
                .list();
    }

    /** The check of a car that was worked on last at handing over, by list or by last word. */
    Optional<Long> newestCheckOfCar(long shop, long car) {
        return jdbc.sql("""
                        select check_run_id from (
                          select check_run_id, stored_at as at from measurement where shop_id = :shop
                          union all select check_run_id, set_at from handover_day where shop_id = :shop
                          union all select check_run_id, decided_at from handover_decision where shop_id = :shop) w
                        join check_run c on c.id = w.check_run_id join revision r on r.id = c.revision_id
                        where r.car_id = :car order by w.at desc limit 1""")
                .param("shop", shop)
                .param("car", car)
                .query(Long.class)
                .optional();
    }

    private List<OpenItem> openItems(long decision) {
        return jdbc.sql("select item, reason from handover_open_item where handover_decision_id = :d order by item")
                .param("d", decision)
                .query((row, n) -> new OpenItem(row.getString("item"), row.getString("reason")))
                .list();
    }
}

package headertank.app.part;

import headertank.app.shop.CurrentUser;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows that say whose owner was reached; they are only ever added. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class RecallStore {

    private final JdbcClient jdbc;
    private final CurrentUser user;

    RecallStore(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    void add(long partId, long carId, boolean reached) {
        jdbc.sql("insert into recall_contact (shop_id, part_id, car_id, reached, account_id) "
                        + "values (:shop, :part, :car, :reached, :who)")
                .param("shop", user.shopId())
                .param("part", partId)
                .param("car", carId)
                .param("reached", reached)
                .param("who", user.accountId())
                .update();
    }
}

package headertank.app.demo;

import headertank.app.account.Accounts;
import headertank.app.shop.Role;
import headertank.app.shop.Shops;
import java.util.List;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Makes the invented shop on a database that is still empty; otherwise touches nothing. */
@Component
@ConditionalOnProperty("headertank.demo")
class DemoShop {

    /** Somebody who can sign in to the demo. */
    record Login(String login, String name, String password, Role role) {}

    static final String NAME = "Invented Motors";
    static final List<Login> LOGINS = List.of(
            new Login("desk", "Dana Desk", "demo-desk-1", Role.FRONT_DESK),
            new Login("tech", "Toni Tech", "demo-tech-1", Role.TECHNICIAN),
            new Login("owner", "Olu Owner", "demo-owner-1", Role.OWNER));

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    private final Accounts accounts;
    private final Shops shops;
    private final JdbcClient jdbc;

    DemoShop(Accounts accounts, Shops shops, JdbcClient jdbc) {
        this.accounts = accounts;
        this.shops = shops;
        this.jdbc = jdbc;
    }

    /** True when the database holds the demo shop afterwards. */
    @Transactional
    public boolean ensure() {
        jdbc.sql("select pg_advisory_xact_lock(hashtext('headertank.first-owner'))")
                .query()
                .listOfRows();
        if (accounts.any()) {
            boolean invented = jdbc.sql("select bool_and(invented) from shop")
                    .query(Boolean.class)
                    .single();
            if (!invented) {
                LOG.warn("This database holds a real shop: no demo data is added.");
            }
            return invented;
        }
        long shop = shops.found(NAME, true);
        for (Login login : LOGINS) {
            accounts.createIn(shop, login.login(), login.name(), login.password(), Set.of(login.role()));
        }
        DemoCars.ALL.forEach(owner -> add(shop, owner));
        return true;
    }

    private void add(long shop, DemoCars.Owner owner) {
        long customer = jdbc.sql("insert into customer (shop_id, name, phone, email) "
                        + "values (:shop, :name, :phone, :email) returning id")
                .param("shop", shop)
                .param("name", owner.name())
                .param("phone", owner.phone())
                .param("email", owner.email())
                .query(Long.class)
                .single();
        for (DemoCars.DemoCar car : owner.cars()) {
            jdbc.sql("insert into car (shop_id, customer_id, plate, make, model, model_year, note) "
                            + "values (:shop, :customer, :plate, :make, :model, :year, :note)")
                    .param("shop", shop)
                    .param("customer", customer)
                    .param("plate", car.plate())
                    .param("make", car.make())
                    .param("model", car.model())
                    .param("year", car.year())
                    .param("note", car.note())
                    .update();
        }
    }
}

package headertank.app.demo;

import headertank.app.account.Accounts;
import headertank.app.car.CarForm;
import headertank.app.car.Cars;
import headertank.app.car.CustomerForm;
import headertank.app.shop.Role;
import headertank.app.shop.Shops;
import headertank.app.shop.TimeZones;
import java.util.List;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
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
    private final Cars cars;

    DemoShop(Accounts accounts, Shops shops, Cars cars) {
        this.accounts = accounts;
        this.shops = shops;
        this.cars = cars;
    }

    /** True when the database holds the demo shop afterwards. */
    @Transactional
    public boolean ensure() {
        accounts.foundOneAtATime();
        if (accounts.any()) {
            boolean invented = shops.allInvented();
            if (!invented) {
                LOG.warn("This database holds a real shop: no demo data is added.");
            }
            return invented;
        }
        long shop = shops.found(NAME, TimeZones.USUAL, true);
        for (Login login : LOGINS) {
            accounts.createIn(shop, login.login(), login.name(), login.password(), Set.of(login.role()));
        }
        DemoCars.ALL.forEach(owner -> add(shop, owner));
        return true;
    }

    private void add(long shop, DemoCars.Owner owner) {
        long customer =
                cars.addCustomerFor(shop, new CustomerForm(owner.name(), owner.phone(), owner.email(), "", null));
        for (DemoCars.DemoCar car : owner.cars()) {
            String year = Integer.toString(car.year());
            cars.addCarFor(
                    shop, new CarForm(customer, "", "", car.plate(), car.make(), car.model(), year, car.note(), null));
        }
    }
}

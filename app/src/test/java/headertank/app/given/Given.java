package headertank.app.given;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.SignOffForm;
import headertank.app.check.Specs;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.shop.Role;
import headertank.calc.carspec.Build;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/**
 * What a test begins with, a line for each: a workshop of its own, somebody who works there, cars that are described, rated and
 * signed. Whoever was signed in last acts on the calling thread, until the test ends.
 */
@Component
public class Given {

    private final People people;
    private final Specs specs;
    private final Checks checks;
    private final JdbcClient jdbc;

    Given(People people, Specs specs, Checks checks, JdbcClient jdbc) {
        this.people = people;
        this.specs = specs;
        this.checks = checks;
        this.jdbc = jdbc;
    }

    /** A new shop, in which somebody with these roles is signed in. */
    public Workshop aWorkshop(Role... roles) {
        long shop = people.aShop();
        return new Workshop(shop, people.actAs(shop, roles));
    }

    /** One shop of one test. */
    public final class Workshop {

        private final long shop;
        private final long account;

        private Workshop(long shop, long account) {
            this.shop = shop;
            this.account = account;
        }

        public long shop() {
            return shop;
        }

        /** Who was signed in when it was made. */
        public long account() {
            return account;
        }

        /** Somebody new, for one request after the other. */
        public RequestPostProcessor with(Role... roles) {
            return people.in(shop, roles);
        }

        /** Signs somebody new in on the calling thread. */
        public void actAs(Role... roles) {
            people.actAs(shop, roles);
        }

        /** A car without any revision. */
        public long aCar() {
            return specs.aCar();
        }

        /** A car with its first revision. */
        public long aCar(Build.Builder build, String... duties) {
            long car = specs.aCar();
            specs.save(car, build.build(), duties);
            return car;
        }

        /** The check of a car's first revision. */
        public long aCheck(long car) {
            return checks.run(car, 1);
        }

        /** Signs a check, whatever it asks to be accepted. */
        public void sign(long check, Decision decision, String remark) {
            checks.sign(
                    check,
                    new SignOffForm(
                            decision,
                            remark,
                            checks.byId(check).result().conditions().stream()
                                    .map(CheckResult.Condition::key)
                                    .toList()));
        }

        public void sign(long check, Decision decision) {
            sign(check, decision, "");
        }

        /** Rows of the shop in a table. */
        public long rows(String table) {
            return jdbc.sql("select count(*) from " + table + " where shop_id = :shop")
                    .param("shop", shop)
                    .query(Long.class)
                    .single();
        }
    }
}

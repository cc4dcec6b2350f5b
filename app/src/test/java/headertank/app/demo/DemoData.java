package headertank.app.demo;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.SignOffForm;
import headertank.app.check.stored.Decision;
import headertank.app.duty.OwnDuty;
import java.util.List;
import java.util.Map;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The demo shop with a check, a signature and a report, for tests that look at every page. */
@Component
public class DemoData {

    private final ObjectProvider<DemoStart> start;
    private final Checks checks;
    private final People people;
    private final OwnDuty ownDuty;
    private final JdbcClient jdbc;

    DemoData(ObjectProvider<DemoStart> start, Checks checks, People people, OwnDuty ownDuty, JdbcClient jdbc) {
        this.start = start;
        this.checks = checks;
        this.people = people;
        this.ownDuty = ownDuty;
        this.jdbc = jdbc;
    }

    /** What to sign in with, by the name of the role. */
    public static Map.Entry<String, String> login(String role) {
        return DemoShop.LOGINS.stream()
                .filter(l -> l.role().name().equals(role))
                .map(l -> Map.entry(l.login(), l.password()))
                .findFirst()
                .orElseThrow();
    }

    /** Makes it all; returns the ids to put into addresses. */
    public Map<String, Long> ensure() {
        start.getObject().run(null);
        people.actAs(login("TECHNICIAN").getKey());
        long car = car("DEMO 02");
        long before = checks.run(car, 1);
        long held = car("DEMO 03");
        long newest = one("select max(number) from revision where car_id = " + held);
        long signed = checks.run(held, (int) newest);
        checks.sign(signed, new SignOffForm(Decision.HOLD_BACK, "Waits for a second look.", List.of()));
        long check = checks.run(car, 2);
        long incident = jdbc.sql("""
                        insert into incident (shop_id, car_id, revision_id, compared_check_run_id, occurred_at, duty, doing,
                                              ambient_k, reading_k, reading_place, reporter_id)
                        select r.shop_id, r.car_id, r.id, :check, now(), 'drift', 'third run in a row', 306.15, 391.15, 'HEAD',
                               r.author_id
                        from revision r where r.car_id = :car and r.number = 2 returning id""")
                .param("check", before)
                .param("car", car)
                .query(Long.class)
                .single();
        ownDuty.add(login("OWNER").getKey());
        People.nobody();
        return Map.ofEntries(
                Map.entry("car", car),
                Map.entry("log", one("select max(id) from car_log where car_id = " + car)),
                Map.entry("other", car("DEMO 05")),
                Map.entry("bare", car("DEMO 04")),
                Map.entry("customer", one("select customer_id from car where id = " + car)),
                Map.entry("check", check),
                Map.entry("signed", signed),
                Map.entry("incident", incident),
                Map.entry("job", one("select max(id) from job where car_id = " + car)),
                Map.entry("part", one("select min(id) from part where kind = 'FAN'")),
                Map.entry("like", one("select max(id) from part where kind = 'FAN'")));
    }

    private long car(String plate) {
        return one("select id from car where plate = '" + plate + "'");
    }

    private long one(String query) {
        return jdbc.sql(query).query(Long.class).single();
    }
}

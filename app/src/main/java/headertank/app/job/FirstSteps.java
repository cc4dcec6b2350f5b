package headertank.app.job;

import headertank.app.shop.CurrentUser;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What a shop does first, and what of it is done. */
@Component
@Transactional(readOnly = true)
class FirstSteps {

    /**
     * One step.
     *
     * @param key of its words in the message files
     * @param path of the page on which it is done
     */
    record Step(String key, String path, boolean done) {}

    private static final String DONE = """
            select (select count(*) > 1 from account where shop_id = :shop) as people,
                   (select settings_version > 0 from shop where id = :shop) as settings,
                   exists (select 1 from part where shop_id = :shop) as part,
                   exists (select 1 from car where shop_id = :shop) as car,
                   exists (select 1 from revision where shop_id = :shop) as spec,
                   exists (select 1 from check_run where shop_id = :shop) as rated,
                   exists (select 1 from sign_off s join check_run k on k.id = s.check_run_id where k.shop_id = :shop) as signed
            """;

    private final JdbcClient jdbc;
    private final CurrentUser user;

    FirstSteps(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /** In the order in which they are best done. */
    List<Step> steps() {
        return jdbc.sql(DONE)
                .param("shop", user.shopId())
                .query((row, n) -> List.of(
                        new Step("people", "/accounts", row.getBoolean("people")),
                        new Step("settings", "/settings", row.getBoolean("settings")),
                        new Step("part", "/parts/import", row.getBoolean("part")),
                        new Step("car", "/intake", row.getBoolean("car")),
                        new Step("spec", "/cars", row.getBoolean("spec")),
                        new Step("rated", "/cars", row.getBoolean("rated")),
                        new Step("signed", "/jobs", row.getBoolean("signed"))))
                .single();
    }

    /** Whether nothing has been signed here yet: the shop is still finding its way in. */
    boolean isNew() {
        return steps().stream().anyMatch(s -> s.key().equals("signed") && !s.done());
    }
}

package headertank.app.demo;

import headertank.app.database.StartLines;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Sees to the demo shop at start and prints its logins. */
@Component
@ConditionalOnProperty("headertank.demo")
class DemoStart implements ApplicationRunner, StartLines {

    private final DemoShop shop;
    private final DemoRevisions revisions;
    private final DemoJobs jobs;
    private final DemoWork work;
    private final DemoLogs logs;
    private volatile boolean present;

    DemoStart(DemoShop shop, DemoRevisions revisions, DemoJobs jobs, DemoWork work, DemoLogs logs) {
        this.shop = shop;
        this.revisions = revisions;
        this.jobs = jobs;
        this.work = work;
        this.logs = logs;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        present = shop.ensure();
        if (present) {
            revisions.ensure();
            jobs.ensure();
            work.ensure();
            logs.ensure();
        }
    }

    @Override
    public Map<String, String> lines() {
        Map<String, String> lines = new LinkedHashMap<>();
        if (present) {
            lines.put("demo shop", DemoShop.NAME + " (invented; sign in with one of these)");
            for (DemoShop.Login login : DemoShop.LOGINS) {
                lines.put(
                        login.role().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        "login " + login.login() + ", password " + login.password());
            }
        }
        return lines;
    }
}

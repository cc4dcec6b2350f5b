package headertank.app.demo;

import java.util.List;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * The invented shop has a past. What is written while somebody is in it counts as of then: within one transaction the columns that
 * say when a row was written get another default, and the clock back before it ends. Nobody else ever sees that default, and without
 * the demo there is nothing in the program or in the schema that could set it. The audit trail keeps to the clock.
 */
@Component
@ConditionalOnProperty("headertank.demo")
class DemoPast {

    private record Written(String table, String column) {}

    private static final List<Written> WRITTEN = List.of(
            new Written("revision", "saved_at"),
            new Written("check_run", "created_at"),
            new Written("sign_off", "signed_at"));

    private final JdbcClient jdbc;

    DemoPast(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Does something as of so many days ago. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void daysAgo(int days, Runnable deed) {
        setDefaults("now() - make_interval(days => " + days + ")");
        deed.run();
        setDefaults("now()");
    }

    private void setDefaults(String moment) {
        WRITTEN.forEach(
                w -> jdbc.sql("alter table %s alter column %s set default %s".formatted(w.table(), w.column(), moment))
                        .update());
    }
}

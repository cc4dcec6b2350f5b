package headertank.app.demo;

import headertank.app.account.password.RefusedPasswords;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Outside the demo its passwords, which everybody can read, open nothing; a database that holds its accounts is told about. */
@Component
@ConditionalOnProperty(name = "headertank.demo", havingValue = "false", matchIfMissing = true)
@Transactional(readOnly = true)
class DemoPasswordsOff implements RefusedPasswords, ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    private final JdbcClient jdbc;

    DemoPasswordsOff(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public boolean refuses(String password) {
        return DemoShop.LOGINS.stream().anyMatch(l -> l.password().equals(password));
    }

    @Override
    public void run(ApplicationArguments arguments) {
        boolean invented = jdbc.sql("select exists (select 1 from shop where invented)")
                .query(Boolean.class)
                .single();
        if (invented) {
            LOG.error(
                    "This database holds the invented demo shop, and the demo is off: its printed passwords open nothing."
                            + " Start with the profile \"demo\" to look at it, or use an empty database.");
        }
    }
}

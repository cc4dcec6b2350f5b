package headertank.app.database;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Tells about a service that runs as the owner of the tables: nothing but triggers then keeps what is stored. */
@Component
@Transactional(readOnly = true)
class OwnershipNotice implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    private final JdbcClient jdbc;
    private final boolean demo;

    OwnershipNotice(JdbcClient jdbc, @Value("${headertank.demo:false}") boolean demo) {
        this.jdbc = jdbc;
        this.demo = demo;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        boolean owns = jdbc.sql(
                        "select pg_has_role(current_user, relowner, 'MEMBER') from pg_class where oid = 'headertank.audit_entry'::regclass")
                .query(Boolean.class)
                .single();
        if (owns && !demo) {
            LOG.warn(
                    "The database's user that serves the pages also owns the tables: what is kept for ever rests on triggers"
                            + " alone. docs/server.md says how to give it a user of its own.");
        }
    }
}

package headertank.app.database;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** Says on the console, once the service answers, where it is and where its records are. */
@Component
class ReadyNotice {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    private final Environment environment;
    private final ObjectProvider<DataFolder> folder;
    private final ObjectProvider<JdbcConnectionDetails> details;
    private final ObjectProvider<StartLines> more;

    ReadyNotice(
            Environment environment,
            ObjectProvider<DataFolder> folder,
            ObjectProvider<JdbcConnectionDetails> details,
            ObjectProvider<StartLines> more) {
        this.environment = environment;
        this.folder = folder;
        this.details = details;
        this.more = more;
    }

    @EventListener(ApplicationReadyEvent.class)
    void say() {
        StringBuilder text = new StringBuilder("Header Tank is ready.\n\n");
        String port = environment.getProperty("local.server.port");
        if (port != null) {
            line(text, "address", "http://localhost:" + port + "/");
        }
        more.orderedStream().forEach(m -> m.lines().forEach((name, value) -> line(text, name, value)));
        folder.ifAvailable(f -> line(text, "records", f.records().toString()));
        details.ifAvailable(d -> line(text, "database", d.getJdbcUrl() + "  user " + d.getUsername()));
        folder.ifAvailable(f -> line(text, "password of it", "in " + f.passwordFile()));
        LOG.info("{}", text);
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append("    ")
                .append(name)
                .append(" ".repeat(Math.max(1, 16 - name.length())))
                .append(value)
                .append('\n');
    }
}

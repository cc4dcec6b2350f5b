package headertank.app.database;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationStartedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** The version of calc-core in this program, and the note of it in the database from which checks are found out of date. */
@Component
public class CalcCoreRelease {

    private final String version;
    private final ReleaseStore store;

    CalcCoreRelease(@Value("${headertank.version}") String version, ReleaseStore store) {
        this.version = version;
        this.store = store;
    }

    /** For example {@code 0.1.0}. */
    public String version() {
        return version;
    }

    /** Raises the note, never lowers it: an older instance may run beside a newer one for a while. */
    @EventListener(ApplicationStartedEvent.class)
    public void raise() {
        store.raise(version);
    }
}

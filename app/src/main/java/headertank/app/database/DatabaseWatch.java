package headertank.app.database;

import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/**
 * Knows whether the database is away. It looks from the first failure that somebody tells of until the database answers again, so
 * that meanwhile nobody waits for a connection to find out. The built-in server is started again when it has died.
 */
@Component
public class DatabaseWatch implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");
    private static final long PAUSE_MS = 500;

    private final ReachStore store;
    private final ObjectProvider<BuiltInServer> builtIn;
    private final AtomicBoolean looking = new AtomicBoolean();
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final AtomicBoolean away = new AtomicBoolean();
    private final AtomicReference<String> told = new AtomicReference<>("");

    DatabaseWatch(ReachStore store, ObjectProvider<BuiltInServer> builtIn) {
        this.store = store;
        this.builtIn = builtIn;
        builtIn.ifAvailable(server -> server.whenItDies(this::failed));
    }

    public boolean isAway() {
        return away.get();
    }

    /** Whether this came about because the database could not be reached. */
    public static boolean isTold(Throwable failure) {
        return ReachStore.isAway(failure);
    }

    /** To be called when it could not be reached: somebody looks after it from now on. */
    public void failed() {
        if (!stopped.get() && looking.compareAndSet(false, true)) {
            Thread look = new Thread(this::look, "database-watch");
            look.setDaemon(true);
            look.start();
        }
    }

    private void look() {
        try {
            while (!stopped.get() && !store.answers()) {
                if (away.compareAndSet(false, true)) {
                    LOG.error("The database cannot be reached. Pages say so until it answers again.");
                }
                builtIn.ifAvailable(this::revive);
                Thread.sleep(PAUSE_MS);
            }
            if (away.compareAndSet(true, false)) {
                LOG.warn("The database answers again.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            looking.set(false);
        }
    }

    private void revive(BuiltInServer server) {
        try {
            server.revive();
            told.set("");
        } catch (IOException | RuntimeException e) {
            String why = String.valueOf(e.getMessage());
            if (!told.getAndSet(why).equals(why)) {
                LOG.error("The built-in database does not start again and is tried until it does: {}", why);
            }
        }
    }

    @Override
    public void destroy() {
        stopped.set(true);
    }
}

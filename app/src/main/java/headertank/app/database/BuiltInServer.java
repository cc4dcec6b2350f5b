package headertank.app.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The PostgreSQL that this program has started on its folder; once it has died it can be started again where it was. */
final class BuiltInServer implements AutoCloseable {

    static final String USER = "postgres";
    private static final String DATABASE = "postgres";
    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    private final DataFolder folder;
    private EmbeddedPostgres server;
    private Runnable whenItDies = () -> {};
    private boolean closed;

    private BuiltInServer(DataFolder folder, EmbeddedPostgres server) {
        this.folder = folder;
        this.server = server;
    }

    static BuiltInServer start(DataFolder folder) throws IOException {
        folder.prepare();
        return new BuiltInServer(folder, launch(folder, 0));
    }

    /**
     * The library's defaults suit throw-away test data: writes that a power cut loses, no password. Here they are turned round.
     *
     * @param port 0 for any that is free
     */
    private static EmbeddedPostgres launch(DataFolder folder, int port) throws IOException {
        return EmbeddedPostgres.builder()
                .setPort(port)
                .setDataDirectory(folder.records())
                .setCleanDataDirectory(false)
                .setOverrideWorkingDirectory(folder.binaries().toFile())
                .setRegisterShutdownHook(false)
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("listen_addresses", "localhost")
                .setLocaleConfig("locale", "C")
                .setLocaleConfig("encoding", "UTF8")
                .setLocaleConfig("auth", "scram-sha-256")
                .setLocaleConfig("pwfile", folder.passwordFile().toString())
                .setConnectConfig("password", folder.password())
                .setPGStartupWait(Duration.ofSeconds(60))
                .start();
    }

    synchronized String url() {
        String url = server.getJdbcUrl(USER, DATABASE);
        return url.substring(0, url.indexOf('?'));
    }

    /** Somebody who wants to know when it ends without having been told to. */
    synchronized void whenItDies(Runnable told) {
        whenItDies = told;
        watch();
    }

    private void watch() {
        server.getProcess().onExit().thenRun(whenItDies);
    }

    /** Starts it again if it has died: on the same port, so that whoever looks for it finds it. */
    synchronized void revive() throws IOException {
        if (closed || server.getProcess().isAlive()) {
            return;
        }
        LOG.error("The built-in database server has died. It is started again.");
        int port = server.getPort();
        server.close();
        // A start that has failed leaves the library's lock held; a lock on another file is another one.
        Files.deleteIfExists(folder.records().resolve(DataFolder.LOCK));
        server = launch(folder, port);
        watch();
    }

    @Override
    public synchronized void close() throws IOException {
        closed = true;
        server.close();
    }
}

package headertank.app.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.env.MockEnvironment;

/** The built-in database as the app starts it. */
class DataFolderIT {

    @TempDir
    Path home;

    private final EmbeddedDatabase database = new EmbeddedDatabase();

    @Test
    void theSecondStartFindsTheRecordsOfTheFirst() throws Exception {
        try (BuiltInServer first = database.builtInServer(folder());
                Connection connection = connect(first)) {
            connection.createStatement().execute("create table kept as select 42 as answer");
        }
        try (BuiltInServer second = database.builtInServer(folder());
                Connection connection = connect(second)) {
            assertThat(one(connection, "select answer from kept")).isEqualTo("42");
            assertThat(one(connection, "show fsync")).isEqualTo("on");
            assertThat(one(connection, "show synchronous_commit")).isEqualTo("on");
        }
    }

    @Test
    void aPasswordGuardsItAndOnlyTheOwnerOfTheFolderCanReadIt() throws Exception {
        try (BuiltInServer server = database.builtInServer(folder())) {
            String url = server.url();
            assertThatThrownBy(() -> DriverManager.getConnection(url, "postgres", "wrong"))
                    .hasMessageContaining("password");
        }
        var view = Files.getFileAttributeView(home.resolve("password"), PosixFileAttributeView.class);
        if (view != null) {
            assertThat(PosixFilePermissions.toString(view.readAttributes().permissions()))
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void thePagesAreServedByAUserWhoOwnsNothingAndWhosePasswordIsNewAtEachStart() throws Exception {
        try (BuiltInServer server = database.builtInServer(folder())) {
            var service = database.embeddedConnectionDetails(server, folder(), new MockEnvironment());
            assertThat(database.embeddedMigrationDetails(server, folder()).getUsername())
                    .isNotEqualTo(service.getUsername());
            try (Connection connection =
                    DriverManager.getConnection(service.getJdbcUrl(), service.getUsername(), service.getPassword())) {
                assertThat(
                                one(
                                        connection,
                                        "select rolsuper or rolcreaterole or rolcreatedb from pg_roles where rolname = current_user"))
                        .isEqualTo("f");
                assertThatThrownBy(() -> one(connection, "select pg_read_file('PG_VERSION')"))
                        .hasMessageContaining("permission denied");
            }
            var again = database.embeddedConnectionDetails(server, folder(), new MockEnvironment());
            assertThat(again.getPassword()).isNotEqualTo(service.getPassword());
        }
    }

    @Test
    void aFolderThatWasCopiedWhileItsServerRanIsRefusedAndThatServerGoesOn(@TempDir Path copy) throws Exception {
        try (BuiltInServer server = database.builtInServer(folder())) {
            DataFolder copied = copyOf(copy);
            assertThatThrownBy(copied::prepare)
                    .isInstanceOf(DataFolderException.class)
                    .hasMessageContaining("copied while the database ran in " + folder().records());
            runs(server);
        }
    }

    @Test
    void aStaleFileStopsNobodysServer(@TempDir Path other) throws Exception {
        try (BuiltInServer server = database.builtInServer(folder())) {
            DataFolder stale = copyOf(other);
            Path noted = stale.records().resolve("postmaster.pid");
            List<String> lines = Files.readAllLines(noted);
            lines.set(1, stale.records().toString());
            lines.set(2, Long.toString(Long.parseLong(lines.get(2).strip()) - 100_000));
            Files.write(noted, lines);
            stale.prepare();
            runs(server);
        }
    }

    private DataFolder copyOf(Path place) throws IOException {
        DataFolder copy = DataFolder.at(place);
        Files.createDirectories(copy.records());
        Files.copy(folder().records().resolve("postmaster.pid"), copy.records().resolve("postmaster.pid"));
        Files.writeString(copy.records().resolve(DataFolder.LOCK), "");
        return copy;
    }

    private void runs(BuiltInServer server) throws Exception {
        try (Connection connection = connect(server)) {
            assertThat(one(connection, "select 1")).isEqualTo("1");
        }
    }

    /** The process of the server is ended as the operating system would; what was written before is there after it. */
    @Test
    void aServerThatDiesIsStartedAgainWhereItWas() throws Exception {
        try (BuiltInServer server = database.builtInServer(folder())) {
            String url = server.url();
            try (Connection connection = connect(server)) {
                connection.createStatement().execute("create table kept as select 42 as answer");
            }
            CountDownLatch died = new CountDownLatch(1);
            server.whenItDies(died::countDown);
            long process = Long.parseLong(Files.readAllLines(folder().records().resolve("postmaster.pid"))
                    .get(0));
            ProcessHandle.of(process).orElseThrow().destroyForcibly();
            died.await();
            revive(server);
            assertThat(server.url()).isEqualTo(url);
            try (Connection connection = connect(server)) {
                assertThat(one(connection, "select answer from kept")).isEqualTo("42");
            }
        }
    }

    /** As the watch does: again, as long as processes of the dead server are still ending. */
    private static void revive(BuiltInServer server) throws Exception {
        for (int tries = 1; ; tries++) {
            try {
                server.revive();
                return;
            } catch (IOException | RuntimeException e) {
                if (tries == 60) {
                    throw e;
                }
                Thread.sleep(500);
            }
        }
    }

    @Test
    void aSecondProgramOnTheSameFolderIsRefused() throws Exception {
        try (BuiltInServer first = database.builtInServer(folder())) {
            assertThatThrownBy(() -> database.builtInServer(folder()))
                    .isInstanceOf(DataFolderException.class)
                    .hasMessageContaining("already running");
            assertThat(first.url()).contains("localhost");
        }
    }

    @Test
    void recordsOfAnotherMajorVersionAreRefused() throws Exception {
        Files.createDirectories(folder().records());
        Files.writeString(folder().records().resolve("PG_VERSION"), "16\n");
        assertThatThrownBy(() -> folder().prepare()).hasMessageContaining("PostgreSQL 16");
    }

    private DataFolder folder() {
        return database.dataFolder(new MockEnvironment().withProperty("headertank.data", home.toString()));
    }

    private Connection connect(BuiltInServer server) throws Exception {
        return DriverManager.getConnection(server.url(), "postgres", folder().password());
    }

    private static String one(Connection connection, String sql) throws Exception {
        try (ResultSet row = connection.createStatement().executeQuery(sql)) {
            row.next();
            return row.getString(1);
        }
    }
}

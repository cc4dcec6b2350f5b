package headertank.app.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
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
        try (EmbeddedPostgres first = database.embeddedPostgres(folder());
                Connection connection = connect(first)) {
            connection.createStatement().execute("create table kept as select 42 as answer");
        }
        try (EmbeddedPostgres second = database.embeddedPostgres(folder());
                Connection connection = connect(second)) {
            assertThat(one(connection, "select answer from kept")).isEqualTo("42");
            assertThat(one(connection, "show fsync")).isEqualTo("on");
            assertThat(one(connection, "show synchronous_commit")).isEqualTo("on");
        }
    }

    @Test
    void aPasswordGuardsItAndOnlyTheOwnerOfTheFolderCanReadIt() throws Exception {
        try (EmbeddedPostgres server = database.embeddedPostgres(folder())) {
            String url = server.getJdbcUrl("postgres", "postgres").replaceFirst("\\?.*", "");
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
        try (EmbeddedPostgres server = database.embeddedPostgres(folder())) {
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
    void aCopiedFolderOrAStaleFileStopsNobodysServer(@TempDir Path copy) throws Exception {
        try (EmbeddedPostgres server = database.embeddedPostgres(folder())) {
            Path records = DataFolder.at(copy).records();
            Files.createDirectories(records);
            Files.copy(folder().records().resolve("postmaster.pid"), records.resolve("postmaster.pid"));
            Files.writeString(records.resolve("epg-lock"), "");
            DataFolder.at(copy).prepare();
            try (Connection connection = connect(server)) {
                assertThat(one(connection, "select 1")).isEqualTo("1");
            }
        }
    }

    @Test
    void aSecondProgramOnTheSameFolderIsRefused() throws Exception {
        try (EmbeddedPostgres first = database.embeddedPostgres(folder())) {
            assertThatThrownBy(() -> database.embeddedPostgres(folder()))
                    .isInstanceOf(DataFolderException.class)
                    .hasMessageContaining("already running");
            assertThat(first.getPort()).isPositive();
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

    private Connection connect(EmbeddedPostgres server) throws Exception {
        return DriverManager.getConnection(
                server.getJdbcUrl("postgres", "postgres").replaceFirst("\\?.*", ""), "postgres", folder().password());
    }

    private static String one(Connection connection, String sql) throws Exception {
        try (ResultSet row = connection.createStatement().executeQuery(sql)) {
            row.next();
            return row.getString(1);
        }
    }
}

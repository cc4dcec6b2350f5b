package headertank.app.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import org.flywaydb.core.Flyway;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/**
 * One PostgreSQL server for all tests of a JVM: a container when the system property {@code headertank.test.image} names an
 * image and a Docker engine answers, else the built-in one in a folder below {@code target/}. The schema is migrated once;
 * each database is a copy of that one.
 */
final class TestServer {

    private static final String TEMPLATE = "migrated";

    /** Serves the pages; the user of the server owns the tables. */
    private static final String SERVICE = "headertank_service";

    /** How to reach one database. */
    record Access(String url, String user, String password) {
        Access database(String name) {
            return new Access(url.replaceFirst("/[^/?]*(\\?.*)?$", "/" + name), user, password);
        }

        /** The same database as the user that serves the pages. */
        Access asService() {
            return new Access(url, SERVICE, SERVICE);
        }

        Connection connect() throws SQLException {
            return DriverManager.getConnection(url, user, password);
        }
    }

    /** Started with the first use, stopped with the JVM. */
    private static final class Holder {
        static final Access SERVER = start();
    }

    private TestServer() {}

    /** Makes the database anew, as a copy of the migrated one, whoever is still connected to the old. */
    static Access fresh(String name) {
        run("drop database if exists " + name + " with (force)", "create database " + name + " template " + TEMPLATE);
        return Holder.SERVER.database(name);
    }

    /** Makes a database without any table. */
    static Access empty(String name) {
        run("drop database if exists " + name + " with (force)", "create database " + name);
        return Holder.SERVER.database(name);
    }

    /** A connection as the user that owns the tables. */
    static Connection ownerOf(String name) throws SQLException {
        return Holder.SERVER.database(name).connect();
    }

    static void run(String... statements) {
        execute(Holder.SERVER, statements);
    }

    private static void execute(Access access, String... statements) {
        try (Connection connection = access.connect();
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Access start() {
        Access server = container();
        if (server == null) {
            server = embedded();
        }
        execute(
                server,
                "create role " + SERVICE + " login nosuperuser nocreatedb nocreaterole password '" + SERVICE + "'",
                "create database " + TEMPLATE);
        Access template = server.database(TEMPLATE);
        Flyway.configure()
                .dataSource(template.url(), template.user(), template.password())
                .locations("classpath:db/headertank")
                .schemas("headertank")
                .placeholders(Map.of("serviceUser", SERVICE))
                .load()
                .migrate();
        return server;
    }

    private static Access container() {
        String image = System.getProperty("headertank.test.image");
        if (image == null || !DockerClientFactory.instance().isDockerAvailable()) {
            return null;
        }
        var container = new PostgreSQLContainer(DockerImageName.parse(image).asCompatibleSubstituteFor("postgres"));
        container.start();
        return new Access(container.getJdbcUrl(), container.getUsername(), container.getPassword());
    }

    private static Access embedded() {
        try {
            Path home =
                    Files.createDirectories(Path.of("target", "test-database").toAbsolutePath());
            EmbeddedPostgres server = EmbeddedPostgres.builder()
                    .setOverrideWorkingDirectory(home.toFile())
                    .setLocaleConfig("locale", "C")
                    .setLocaleConfig("encoding", "UTF8")
                    .start();
            return new Access(
                    server.getJdbcUrl("postgres", "postgres").replaceFirst("\\?.*", ""), "postgres", "postgres");
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}

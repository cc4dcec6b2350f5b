package headertank.app.database;

import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.stereotype.Component;

/** Does to a test's database what its owner can do past the program, with all triggers off. */
@Component
public class OwnersHand {

    private final Environment environment;

    OwnersHand(Environment environment) {
        this.environment = environment;
    }

    public void past(String... deeds) {
        try (var owner = TestServer.ownerOf(environment.getRequiredProperty(FreshDatabase.NAME));
                Statement statement = owner.createStatement()) {
            statement.execute("set session_replication_role = replica");
            for (String deed : deeds) {
                statement.execute(deed);
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Takes a test's database away from whoever uses it, or gives it back. */
    public void reach(boolean there) {
        String name = environment.getRequiredProperty(FreshDatabase.NAME);
        TestServer.run(
                "alter database " + name + " allow_connections " + there,
                there
                        ? "select 1"
                        : "select pg_terminate_backend(pid) from pg_stat_activity where datname = '" + name + "'");
    }

    /** A database without any table, as its owner; what was there under this name is gone. */
    public DataSource emptyDatabase(String name) {
        TestServer.Access access = TestServer.empty(name);
        return new DriverManagerDataSource(access.url(), access.user(), access.password());
    }
}

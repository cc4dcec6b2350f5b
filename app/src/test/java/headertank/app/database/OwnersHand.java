package headertank.app.database;

import java.sql.SQLException;
import java.sql.Statement;
import org.springframework.core.env.Environment;
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
}

package headertank.app.database;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

/** Makes the user that serves the pages on the built-in server. */
final class ServiceUserStore {

    static final String NAME = "headertank_service";

    private ServiceUserStore() {}

    /** Its password is made anew at each start and kept nowhere. */
    static void prepare(String url, String owner, String ownersPassword, String password) {
        try (Connection connection = DriverManager.getConnection(url, owner, ownersPassword);
                Statement statement = connection.createStatement()) {
            statement.execute("do $$ begin if not exists (select from pg_roles where rolname = '" + NAME
                    + "') then create role " + NAME + "; end if; end $$");
            statement.execute("alter role " + NAME
                    + " login nosuperuser nocreatedb nocreaterole noreplication password '" + password + "'");
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}

package headertank.app.database;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.sql.Statement;
import java.util.Properties;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionSystemException;

/** Whether the database answers, past the pool: one connection of its own for one question. */
@Component
class ReachStore {

    private static final String PATIENCE_S = "2";

    private final JdbcConnectionDetails details;

    ReachStore(JdbcConnectionDetails details) {
        this.details = details;
    }

    boolean answers() {
        Properties how = new Properties();
        if (details.getUsername() != null) {
            how.setProperty("user", details.getUsername());
            how.setProperty("password", details.getPassword() == null ? "" : details.getPassword());
        }
        how.setProperty("loginTimeout", PATIENCE_S);
        how.setProperty("connectTimeout", PATIENCE_S);
        how.setProperty("socketTimeout", PATIENCE_S);
        try (Connection connection = DriverManager.getConnection(details.getJdbcUrl(), how);
                Statement statement = connection.createStatement()) {
            return statement.execute("select 1");
        } catch (SQLException e) {
            return false;
        }
    }

    /**
     * Whether this came about because the database could not be reached: SQLSTATE 08, connection, and 57P, shutdown; or a transaction
     * that could not be rolled back for that reason.
     */
    static boolean isAway(Throwable failure) {
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof SQLTransientConnectionException) {
                return true;
            }
            if (t instanceof SQLException e && isAway(e.getSQLState(), e.getMessage())) {
                return true;
            }
            if (t instanceof TransactionSystemException e && isAway(e.getApplicationException())) {
                return true;
            }
        }
        return false;
    }

    /** The pool closes a connection that has failed; whoever still holds it is told so without a state. */
    private static boolean isAway(String state, String message) {
        return state == null
                ? "Connection is closed".equals(message)
                : state.startsWith("08") || state.startsWith("57P");
    }
}

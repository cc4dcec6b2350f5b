package headertank.app.database;

import java.util.HashMap;
import java.util.Map;
import org.springframework.boot.flyway.autoconfigure.FlywayConfigurationCustomizer;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * The user of the database that serves the pages, beside the one that owns the tables and migrates them. What the former may do is
 * set after each migration.
 */
@Configuration(proxyBeanMethods = false)
class ServiceUser {

    /** Lets the migrations know whom to give rights to. */
    @Bean
    FlywayConfigurationCustomizer serviceUserInMigrations(JdbcConnectionDetails service) {
        String name = service.getUsername() == null ? "" : service.getUsername();
        return flyway -> {
            Map<String, String> placeholders = new HashMap<>(flyway.getPlaceholders());
            placeholders.put("serviceUser", name);
            flyway.placeholders(placeholders);
        };
    }
}

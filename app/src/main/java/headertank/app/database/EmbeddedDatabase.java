package headertank.app.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.springframework.boot.autoconfigure.AutoConfiguration;
import org.springframework.boot.autoconfigure.condition.ConditionMessage;
import org.springframework.boot.autoconfigure.condition.ConditionOutcome;
import org.springframework.boot.autoconfigure.condition.ConditionalOnMissingBean;
import org.springframework.boot.autoconfigure.condition.SpringBootCondition;
import org.springframework.boot.flyway.autoconfigure.FlywayConnectionDetails;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.core.env.Environment;
import org.springframework.core.type.AnnotatedTypeMetadata;

/**
 * A real PostgreSQL that the app starts and stops itself, with its records kept in a folder of the user. Off as soon as
 * {@code spring.datasource.url} names a server.
 */
@AutoConfiguration(before = DataSourceAutoConfiguration.class)
@Conditional(EmbeddedDatabase.NoServerNamed.class)
public class EmbeddedDatabase {

    private static final String USER = "postgres";
    private static final String DATABASE = "postgres";

    /** The folder, held by this program until it ends. */
    @Bean
    DataFolder dataFolder(Environment environment) {
        return DataFolder.at(Path.of(environment.getRequiredProperty("headertank.data")));
    }

    /**
     * Starts the server. The library's defaults suit throw-away test data: writes that a power cut loses, no password. Here
     * they are turned round.
     */
    @Bean(destroyMethod = "close")
    @ConditionalOnMissingBean(JdbcConnectionDetails.class)
    EmbeddedPostgres embeddedPostgres(DataFolder folder) throws IOException {
        folder.prepare();
        return EmbeddedPostgres.builder()
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

    /**
     * Where the rest of the program finds it: as a user that owns nothing. The demo writes its own past and is the owner for that.
     */
    @Bean
    @ConditionalOnMissingBean
    JdbcConnectionDetails embeddedConnectionDetails(
            EmbeddedPostgres server, DataFolder folder, Environment environment) {
        if (environment.getProperty("headertank.demo", Boolean.class, false)) {
            return new Details(url(server), USER, folder.password());
        }
        String password = DataFolder.randomPassword();
        ServiceUserStore.prepare(url(server), USER, folder.password(), password);
        return new Details(url(server), ServiceUserStore.NAME, password);
    }

    /** Who migrates: the owner. */
    @Bean
    @ConditionalOnMissingBean
    FlywayConnectionDetails embeddedMigrationDetails(EmbeddedPostgres server, DataFolder folder) {
        return new MigrationDetails(url(server), USER, folder.password());
    }

    private static String url(EmbeddedPostgres server) {
        String url = server.getJdbcUrl(USER, DATABASE);
        return url.substring(0, url.indexOf('?'));
    }

    private record Details(String getJdbcUrl, String getUsername, String getPassword)
            implements JdbcConnectionDetails {}

    private record MigrationDetails(String getJdbcUrl, String getUsername, String getPassword)
            implements FlywayConnectionDetails {}

    /** True unless somebody named a database server. */
    static class NoServerNamed extends SpringBootCondition {
        @Override
        public ConditionOutcome getMatchOutcome(ConditionContext context, AnnotatedTypeMetadata metadata) {
            boolean named = context.getEnvironment().containsProperty("spring.datasource.url");
            return new ConditionOutcome(
                    !named,
                    ConditionMessage.of(named ? "spring.datasource.url is set" : "no database server is named"));
        }
    }
}

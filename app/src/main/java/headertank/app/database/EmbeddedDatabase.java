package headertank.app.database;

import java.io.IOException;
import java.nio.file.Path;
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

    /** The folder, held by this program until it ends. */
    @Bean
    DataFolder dataFolder(Environment environment) {
        return DataFolder.at(Path.of(environment.getRequiredProperty("headertank.data")));
    }

    /** Beside the records, so that the owner of the folder has all in one place; another disk is better. */
    @Bean
    BackupPlace backupPlace(DataFolder folder, Environment environment) {
        String named = environment.getProperty("headertank.backup.folder", "");
        return new BackupPlace(named.isEmpty() ? folder.backups() : Path.of(named));
    }

    /** Runs until the program ends. */
    @Bean(destroyMethod = "close")
    @ConditionalOnMissingBean(JdbcConnectionDetails.class)
    BuiltInServer builtInServer(DataFolder folder) throws IOException {
        return BuiltInServer.start(folder);
    }

    /**
     * Where the rest of the program finds it: as a user that owns nothing. The demo writes its own past and is the owner for that.
     */
    @Bean
    @ConditionalOnMissingBean
    JdbcConnectionDetails embeddedConnectionDetails(BuiltInServer server, DataFolder folder, Environment environment) {
        if (environment.getProperty("headertank.demo", Boolean.class, false)) {
            return new Details(server.url(), BuiltInServer.USER, folder.password());
        }
        String password = DataFolder.randomPassword();
        ServiceUserStore.prepare(server.url(), BuiltInServer.USER, folder.password(), password);
        return new Details(server.url(), ServiceUserStore.NAME, password);
    }

    /** Who migrates: the owner. */
    @Bean
    @ConditionalOnMissingBean
    FlywayConnectionDetails embeddedMigrationDetails(BuiltInServer server, DataFolder folder) {
        return new MigrationDetails(server.url(), BuiltInServer.USER, folder.password());
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

package headertank.app.backup;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.stereotype.Component;

/**
 * Makes the tables what this program needs before anything else reads them: refuses those of a newer program, brings a backup back
 * when the start names one, and migrates.
 */
@Component
class SchemaStore implements FlywayMigrationStrategy {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    /** What is made anew whenever it changes may need tables of later versions: no file is called so. */
    private static final String LATER = "after-the-rows";

    private final BackupFilesStore files;
    private final String from;
    private final String passphrase;

    /** @param from file that is to be brought back; empty for none */
    SchemaStore(
            BackupFilesStore files,
            @Value("${headertank.restore.from:}") String from,
            @Value("${headertank.backup.passphrase:}") String passphrase) {
        this.files = files;
        this.from = from;
        this.passphrase = passphrase;
    }

    @Override
    public void migrate(Flyway flyway) {
        refuseNewer(flyway);
        if (!from.isEmpty()) {
            bringBack(flyway);
        }
        flyway.migrate();
    }

    private static void refuseNewer(Flyway flyway) {
        Arrays.stream(flyway.info().all())
                .filter(m -> m.getState().isApplied() && !m.getState().isResolved() && m.getVersion() != null)
                .map(MigrationInfo::getVersion)
                .max(Comparable::compareTo)
                .ifPresent(v -> {
                    throw new BackupException(
                            "The records were written by a newer release: their tables have version " + v
                                    + ", which this one does not know.",
                            "Start the newer release; or restore a backup that this one has made into an empty database.");
                });
    }

    private void bringBack(Flyway flyway) {
        if (flyway.info().current() != null) {
            throw new BackupException(
                    "The backup " + from + " is not brought back, for the database holds records already.",
                    "Start without --headertank.restore.from; or name an empty folder or database.");
        }
        Path named = Path.of(from);
        Path plain = named;
        try {
            if (files.isSealed(named)) {
                plain = Files.createTempFile("headertank", ".tmp");
                try (InputStream in = new BufferedInputStream(Files.newInputStream(named));
                        OutputStream out = new BufferedOutputStream(Files.newOutputStream(plain))) {
                    SealedFile.open(in, out, passphrase);
                }
            }
            bringBack(flyway, plain);
        } catch (IOException | SQLException e) {
            throw new BackupException(
                    "The backup " + from + " could not be brought back: " + e.getMessage(),
                    "Mend what it says, empty the database, and try again.",
                    e);
        } finally {
            if (!plain.equals(named)) {
                plain.toFile().delete();
            }
        }
    }

    private void bringBack(Flyway flyway, Path file) throws SQLException, IOException {
        Manifest manifest = files.manifest(file);
        boolean known = Arrays.stream(flyway.info().all())
                .anyMatch(
                        m -> m.getVersion() != null && m.getVersion().toString().equals(manifest.schema()));
        if (!known) {
            throw new BackupException(
                    "The backup " + from + " was made by a newer release, " + manifest.program()
                            + ": its tables have version " + manifest.schema() + ", which this one does not know.",
                    "Bring it back with that release or a later one.");
        }
        Flyway.configure()
                .configuration(flyway.getConfiguration())
                .target(manifest.schema())
                .repeatableSqlMigrationPrefix(LATER)
                .load()
                .migrate();
        try (Connection owner = flyway.getConfiguration().getDataSource().getConnection()) {
            files.read(file, manifest, owner);
        }
        LOG.warn(
                "Brought back {} rows of {} tables, as they were at {}: counts and hashes are those of the backup.",
                manifest.rows(),
                manifest.tables().size(),
                manifest.takenAt());
    }
}

package headertank.app.backup;

import java.io.IOException;
import java.nio.file.Path;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.stereotype.Component;

/** Started with {@code --headertank.backup.to=FILE}: writes that file; the program then ends. */
@Component
class BackupCommand implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    private final Backups backups;
    private final String to;
    private final String passphrase;

    BackupCommand(
            Backups backups,
            @Value("${headertank.backup.to:}") String to,
            @Value("${headertank.backup.passphrase:}") String passphrase) {
        this.backups = backups;
        this.to = to;
        this.passphrase = passphrase;
    }

    @Override
    public void run(ApplicationArguments arguments) throws IOException {
        if (!to.isEmpty()) {
            Manifest manifest = backups.make(Path.of(to), passphrase);
            LOG.warn(
                    "Backup of {} rows of {} tables: {}",
                    manifest.rows(),
                    manifest.tables().size(),
                    Path.of(to).toAbsolutePath());
        }
    }
}

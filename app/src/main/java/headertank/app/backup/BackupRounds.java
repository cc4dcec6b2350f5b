package headertank.app.backup;

import headertank.app.database.BackupPlace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/** On the built-in database a backup each day that the program runs; the newest are kept. */
@Component
class BackupRounds {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    /** Kept at most; modelling choice. */
    static final int KEPT = 14;

    private static final Duration A_DAY = Duration.ofHours(20);
    private static final String BEGINS = "headertank-";
    private static final String ENDS = ".backup";
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").withZone(ZoneOffset.UTC);

    private final Backups backups;
    private final ObjectProvider<BackupPlace> place;
    private final String passphrase;

    BackupRounds(
            Backups backups,
            ObjectProvider<BackupPlace> place,
            @Value("${headertank.backup.passphrase:}") String passphrase) {
        this.backups = backups;
        this.place = place;
        this.passphrase = passphrase;
    }

    /** What a backup that is made now is called; the moment is that of Greenwich. */
    static String name() {
        return BEGINS + NAME.format(Instant.now()) + ENDS;
    }

    /** Looks by the hour, for the program may run on a machine that sleeps at night. */
    @Scheduled(initialDelayString = "PT10M", fixedDelayString = "PT1H")
    void make() throws IOException {
        BackupPlace here = place.getIfAvailable();
        if (here == null || newest().filter(BackupRounds::isOfToday).isPresent()) {
            return;
        }
        Files.createDirectories(here.folder());
        Path file = here.folder().resolve(name());
        try {
            Manifest manifest = backups.make(file, passphrase);
            LOG.info("Backup of {} rows: {}", manifest.rows(), file);
        } catch (IOException | RuntimeException e) {
            LOG.error("No backup could be made in {}: {}", here.folder(), e.getMessage());
            return;
        }
        List<Path> all = all(here.folder());
        for (Path old : all.subList(Math.min(KEPT, all.size()), all.size())) {
            Files.delete(old);
        }
    }

    private static boolean isOfToday(Path file) {
        try {
            Duration age = Duration.between(Files.getLastModifiedTime(file).toInstant(), Instant.now());
            return age.compareTo(A_DAY) < 0 && !age.isNegative();
        } catch (IOException e) {
            return false;
        }
    }

    /** The newest of those that were made by the day. */
    Optional<Path> newest() throws IOException {
        BackupPlace here = place.getIfAvailable();
        return here == null || !Files.isDirectory(here.folder())
                ? Optional.empty()
                : all(here.folder()).stream().findFirst();
    }

    private static List<Path> all(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().matches(BEGINS + "[0-9]{8}-[0-9]{6}" + ENDS))
                    .sorted((a, b) -> b.getFileName().compareTo(a.getFileName()))
                    .toList();
        }
    }
}

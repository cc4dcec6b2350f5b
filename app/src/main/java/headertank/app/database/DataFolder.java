package headertank.app.database;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The folder that holds the shop's records: {@code postgresql-17} (the records), {@code binaries} (the unpacked server) and
 * {@code password}. The three are siblings on purpose: the server library clears out old folders below its own.
 */
final class DataFolder {

    private static final Logger LOG = LoggerFactory.getLogger(DataFolder.class);
    /** Major version of the server binaries in the build; another major version cannot read the same records. */
    static final String MAJOR = "17";

    /** Held by the library as long as the server runs. */
    static final String LOCK = "epg-lock";

    /** Between the start of a server's process and what it notes [s]. */
    private static final long START_TOLERANCE_S = 120;

    private final Path home;

    private DataFolder(Path home) {
        this.home = home;
    }

    static DataFolder at(Path home) {
        return new DataFolder(home.toAbsolutePath().normalize());
    }

    Path records() {
        return home.resolve("postgresql-" + MAJOR);
    }

    Path binaries() {
        return home.resolve("binaries");
    }

    Path backups() {
        return home.resolve("backups");
    }

    Path passwordFile() {
        return home.resolve("password");
    }

    String password() {
        try {
            return Files.readString(passwordFile()).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Makes the folder ready to start on, or says why it is not. */
    void prepare() throws IOException {
        Files.createDirectories(records());
        Files.createDirectories(binaries());
        ownerOnly(home, "rwx------");
        refuseOtherMajor();
        refuseHotCopy();
        stopOrphan();
        if (!Files.exists(passwordFile())) {
            if (Files.exists(records().resolve("PG_VERSION"))) {
                throw new DataFolderException(
                        "The records in " + records() + " are protected by a password, and the file " + passwordFile()
                                + " that holds it is gone.",
                        "Put the file back from your backup of " + home + ".");
            }
            writePassword();
        }
    }

    static String randomPassword() {
        byte[] random = new byte[24];
        new SecureRandom().nextBytes(random);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(random);
    }

    private void writePassword() throws IOException {
        Files.writeString(passwordFile(), "");
        ownerOnly(passwordFile(), "rw-------");
        Files.writeString(passwordFile(), randomPassword());
    }

    private static void ownerOnly(Path path, String rights) throws IOException {
        var view = Files.getFileAttributeView(path, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(PosixFilePermissions.fromString(rights));
        }
    }

    private void refuseOtherMajor() throws IOException {
        Path version = records().resolve("PG_VERSION");
        if (!Files.exists(version)) {
            return;
        }
        String found = Files.readString(version).strip();
        if (!found.equals(MAJOR)) {
            throw new DataFolderException(
                    "The records in " + records() + " were written by PostgreSQL " + found + "; this release brings "
                            + MAJOR + ".",
                    "Dump them with the tools of PostgreSQL " + found + " and restore them into an empty folder.");
        }
    }

    /**
     * A server notes in its folder where it runs, until it stops. Another place there means that the folder was copied meanwhile:
     * files of several moments, from which nobody can tell what is missing.
     */
    private void refuseHotCopy() throws IOException {
        Path noted = records().resolve("postmaster.pid");
        if (!Files.exists(noted)) {
            return;
        }
        List<String> lines = Files.readAllLines(noted);
        if (lines.size() < 2 || isHere(lines.get(1).strip())) {
            return;
        }
        throw new DataFolderException(
                "The records in " + records() + " were copied while the database ran in "
                        + lines.get(1).strip() + ". Such a copy may lack what was being written.",
                "Restore a backup into an empty folder; or stop the program there, copy the folder anew and start on that. If"
                        + " the folder was moved and not copied, remove " + noted + " and start again.");
    }

    private boolean isHere(String place) throws IOException {
        try {
            Path path = Path.of(place);
            return path.equals(records()) || Files.exists(path) && Files.isSameFile(path, records());
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /**
     * After a crash of this program alone its server keeps running. A lock that nobody holds tells such an orphan from a second
     * program on the same folder: the orphan is stopped, the second program is refused.
     */
    private void stopOrphan() throws IOException {
        Path lockFile = records().resolve(LOCK);
        if (!Files.exists(lockFile)) {
            return;
        }
        try (RandomAccessFile file = new RandomAccessFile(lockFile.toFile(), "rw")) {
            FileLock lock = tryLock(file);
            if (lock == null) {
                throw inUse();
            }
            try {
                endServer();
            } finally {
                lock.release();
            }
        }
    }

    private static FileLock tryLock(RandomAccessFile file) throws IOException {
        try {
            return file.getChannel().tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    private void endServer() throws IOException {
        Path pidFile = records().resolve("postmaster.pid");
        if (!Files.exists(pidFile)) {
            return;
        }
        List<String> lines = Files.readAllLines(pidFile);
        Optional<ProcessHandle> server = lines.isEmpty()
                ? Optional.empty()
                : ProcessHandle.of(Long.parseLong(lines.get(0).strip()));
        if (server.isEmpty() || !isPostgres(server.get()) || !servesThisFolder(lines, server.get())) {
            return;
        }
        LOG.warn(
                "Stopping the database server {} that an earlier run left behind.",
                server.get().pid());
        server.get().destroy();
        try {
            server.get().onExit().get(60, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        } catch (Exception e) {
            throw new DataFolderException(
                    "The database server of an earlier run, process "
                            + server.get().pid() + ", does not stop.",
                    "End that process, then start again.");
        }
    }

    /**
     * Whether that process is the server of this folder: a copied folder names the server of the one it was copied from, and a
     * stale file names whoever has the number now. The server writes its folder and the second of its start into the file.
     */
    private boolean servesThisFolder(List<String> lines, ProcessHandle process) {
        if (lines.size() < 3) {
            return false;
        }
        try {
            boolean here = isHere(lines.get(1).strip());
            long noted = Long.parseLong(lines.get(2).strip());
            long begun =
                    process.info().startInstant().map(Instant::getEpochSecond).orElse(noted);
            return here && Math.abs(begun - noted) <= START_TOLERANCE_S;
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    private static boolean isPostgres(ProcessHandle process) {
        return process.info()
                .command()
                .map(c -> Path.of(c).getFileName().toString().startsWith("postgres"))
                .orElse(false);
    }

    private DataFolderException inUse() {
        return new DataFolderException(
                "Another Header Tank is already running on the folder " + home + ".",
                "Use that one, or stop it first; or give this one a folder of its own with --headertank.data=FOLDER.");
    }
}

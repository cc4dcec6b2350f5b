package headertank.app.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Reads backups, and puts their rows into empty tables. */
@Component
class BackupFilesStore {

    static final String MANIFEST = "manifest.json";
    static final String ROWS = "rows/";

    private final JsonMapper json;

    BackupFilesStore(JsonMapper json) {
        this.json = json;
    }

    boolean isSealed(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return SealedFile.begins(in.readNBytes(SealedFile.headLength()));
        }
    }

    /** @throws BackupException when it is no backup that this program reads */
    Manifest manifest(Path file) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry entry = zip.getEntry(MANIFEST);
            Manifest manifest = entry == null
                    ? null
                    : json.readValue(zip.getInputStream(entry).readAllBytes(), Manifest.class);
            if (manifest != null && manifest.format() == Manifest.FORMAT) {
                return manifest;
            }
        } catch (IOException | RuntimeException e) {
            throw noBackup(file, e);
        }
        throw noBackup(file, null);
    }

    private static BackupException noBackup(Path file, Exception cause) {
        return new BackupException(
                "The file " + file + " is no backup that this program reads.",
                "Name a file that the program has made, of this or an earlier version.",
                cause);
    }

    /**
     * Puts all rows of a file into tables of its version, and looks at them again as they stand there. Tables and columns that a
     * later release has slipped in below that version stay as it made them.
     *
     * @param owner whoever owns the tables
     * @throws BackupException when a table has not the rows that the file says; then nothing is changed
     */
    void read(Path file, Manifest manifest, Connection owner) throws SQLException, IOException {
        RowStore rows = new RowStore(owner);
        rows.beginRestore();
        Map<String, List<String>> tables = rows.tables();
        Map<String, Manifest.Table> kept = new TreeMap<>();
        for (Manifest.Table table : manifest.tables()) {
            if (!tables.getOrDefault(table.name(), List.of()).containsAll(table.columns())) {
                throw differs(table.name(), file);
            }
            kept.put(table.name(), table);
        }
        List<String> order = rows.parentsFirst(tables.keySet());
        List<String> back = order.stream().filter(kept::containsKey).toList();
        rows.triggers(order, false);
        rows.empty(back);
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (String name : back) {
                ZipEntry entry = zip.getEntry(ROWS + name);
                if (entry == null) {
                    throw differs(name, file);
                }
                try (InputStream in = zip.getInputStream(entry)) {
                    rows.read(kept.get(name), in);
                }
            }
        }
        rows.numbersGoOn();
        rows.triggers(order, true);
        for (Manifest.Table table : manifest.tables()) {
            if (!rows.write(table.name(), table.columns(), OutputStream.nullOutputStream())
                    .equals(table)) {
                throw differs(table.name(), file);
            }
        }
        rows.commit();
    }

    private static BackupException differs(String table, Path file) {
        return new BackupException(
                "The rows of " + table + " are not those that the backup " + file
                        + " says it holds. Nothing was brought back.",
                "Take another copy of the file, or an earlier backup.");
    }
}

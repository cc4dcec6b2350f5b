package headertank.app.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Writes all rows of one moment into a file. */
@Component
class BackupStore {

    private final DataSource source;
    private final JsonMapper json;
    private final String program;

    BackupStore(DataSource source, JsonMapper json, @Value("${headertank.version}") String program) {
        this.source = source;
        this.json = json;
        this.program = program;
    }

    /** Writes a new file, while others read and write the database. */
    Manifest write(Path file) throws IOException {
        try (Connection connection = source.getConnection();
                OutputStream raw = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(raw)) {
            RowStore rows = new RowStore(connection);
            rows.beginSnapshot();
            Instant at = Instant.now();
            List<Manifest.Table> tables = new ArrayList<>();
            for (Map.Entry<String, List<String>> table : rows.tables().entrySet()) {
                zip.putNextEntry(new ZipEntry(BackupFilesStore.ROWS + table.getKey()));
                tables.add(rows.write(table.getKey(), table.getValue(), zip));
                zip.closeEntry();
            }
            Manifest manifest = new Manifest(Manifest.FORMAT, program, rows.schemaVersion(), at, tables);
            zip.putNextEntry(new ZipEntry(BackupFilesStore.MANIFEST));
            zip.write(json.writeValueAsBytes(manifest));
            zip.closeEntry();
            rows.commit();
            return manifest;
        } catch (SQLException e) {
            throw new IOException(e);
        }
    }
}

package headertank.app.backup;

import java.time.Instant;
import java.util.List;

/**
 * What a backup says about itself.
 *
 * @param format of the file
 * @param program version that made it
 * @param schema version of the tables
 * @param takenAt moment of the one snapshot that all rows are of
 */
record Manifest(int format, String program, String schema, Instant takenAt, List<Table> tables) {

    static final int FORMAT = 1;

    Manifest {
        tables = List.copyOf(tables);
    }

    /**
     * One table.
     *
     * @param columns those that are stored, as SQL names them
     * @param sha256 of the rows as they stand in the file, in hexadecimal digits
     */
    record Table(String name, List<String> columns, long rows, String sha256) {
        Table {
            columns = List.copyOf(columns);
        }
    }

    long rows() {
        return tables.stream().mapToLong(Table::rows).sum();
    }
}

package headertank.app.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.postgresql.PGConnection;
import org.postgresql.copy.CopyManager;

/** Rows of all tables as text, out of a database and into one, on one connection. */
final class RowStore {

    private static final String SCHEMA = "headertank";

    /** What is made anew or passes: the history of the schema, who is signed in, and who has to wait. */
    private static final Set<String> LEFT_OUT =
            Set.of("flyway_schema_history", "spring_session", "spring_session_attributes", "sign_in_brake");

    private final Connection connection;

    RowStore(Connection connection) {
        this.connection = connection;
    }

    /** From here on all that is read is of one moment, and reads the same on each machine. */
    void beginSnapshot() throws SQLException {
        connection.setAutoCommit(false);
        run("set transaction isolation level repeatable read, read only");
        readAlike();
    }

    /** From here on all is written or nothing. */
    void beginRestore() throws SQLException {
        connection.setAutoCommit(false);
        readAlike();
    }

    private void readAlike() throws SQLException {
        run("set local datestyle = 'ISO'");
        run("set local timezone = 'UTC'");
        run("set local bytea_output = 'hex'");
        run("set local intervalstyle = 'postgres'");
        run("set local extra_float_digits = 1");
    }

    void commit() throws SQLException {
        connection.commit();
    }

    private void run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private List<String> texts(String sql) throws SQLException {
        List<String> all = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                all.add(rows.getString(1));
            }
        }
        return all;
    }

    /** Version of the tables; empty in a database that has none. */
    String schemaVersion() throws SQLException {
        return texts("select version from " + SCHEMA + ".flyway_schema_history where success and version is not null"
                        + " order by string_to_array(version, '.')::int[] desc limit 1")
                .stream()
                .findFirst()
                .orElse("");
    }

    /** Columns that are stored, by table. */
    Map<String, List<String>> tables() throws SQLException {
        Map<String, List<String>> tables = new TreeMap<>();
        for (String line : texts("select c.relname || ' ' || quote_ident(a.attname) from pg_class c"
                + " join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''"
                + " where c.relnamespace = '" + SCHEMA
                + "'::regnamespace and c.relkind = 'r' order by c.relname, a.attnum")) {
            String[] part = line.split(" ", 2);
            if (!LEFT_OUT.contains(part[0])) {
                tables.computeIfAbsent(part[0], t -> new ArrayList<>()).add(part[1]);
            }
        }
        return tables;
    }

    /** Writes a table's rows in the order of its key; says how many they are and what their hash is. */
    Manifest.Table write(String table, List<String> columns, OutputStream out) throws SQLException, IOException {
        List<String> key =
                texts("select quote_ident(a.attname) from pg_index i join pg_attribute a on a.attrelid = i.indrelid"
                        + " and a.attnum = any(i.indkey) where i.indisprimary and i.indrelid = '" + SCHEMA + "." + table
                        + "'::regclass order by array_position(i.indkey::int2[], a.attnum)");
        String order = String.join(", ", key.isEmpty() ? columns : key);
        MessageDigest digest = sha256();
        long rows = copies().copyOut(
                        "copy (select " + String.join(", ", columns) + " from " + SCHEMA + "." + table + " order by "
                                + order + ") to stdout",
                        new DigestOutputStream(new Kept(out), digest));
        return new Manifest.Table(table, columns, rows, HexFormat.of().formatHex(digest.digest()));
    }

    /** Tables in an order in which each finds the rows that it points to. */
    List<String> parentsFirst(Set<String> tables) throws SQLException {
        Map<String, Set<String>> parents = new LinkedHashMap<>();
        tables.forEach(t -> parents.put(t, new TreeSet<>()));
        for (String line :
                texts("select c.relname || ' ' || p.relname from pg_constraint f join pg_class c on c.oid = f.conrelid"
                        + " join pg_class p on p.oid = f.confrelid where f.contype = 'f' and c.relnamespace = '"
                        + SCHEMA
                        + "'::regnamespace and c.oid <> p.oid")) {
            String[] part = line.split(" ", 2);
            if (parents.containsKey(part[0]) && parents.containsKey(part[1])) {
                parents.get(part[0]).add(part[1]);
            }
        }
        Set<String> order = new LinkedHashSet<>();
        while (order.size() < parents.size()) {
            int before = order.size();
            parents.forEach((table, needs) -> {
                if (order.containsAll(needs)) {
                    order.add(table);
                }
            });
            if (order.size() == before) {
                throw new IllegalStateException("tables that point to each other: " + parents.keySet());
            }
        }
        return List.copyOf(order);
    }

    /** Removes what the making of the tables has put into them. */
    void empty(List<String> parentsFirst) throws SQLException {
        for (int i = parentsFirst.size() - 1; i >= 0; i--) {
            run("delete from " + SCHEMA + "." + parentsFirst.get(i));
        }
    }

    /** Triggers look at what people do; what comes back was looked at when it was done. */
    void triggers(List<String> tables, boolean on) throws SQLException {
        for (String table : tables) {
            run("alter table " + SCHEMA + "." + table + (on ? " enable" : " disable") + " trigger user");
        }
    }

    /** Adds rows as they were written; returns how many. */
    long read(Manifest.Table table, InputStream in) throws SQLException, IOException {
        return copies().copyIn(
                        "copy " + SCHEMA + "." + table.name() + " (" + String.join(", ", table.columns())
                                + ") from stdin",
                        in);
    }

    /** New rows get numbers behind those that came back. */
    void numbersGoOn() throws SQLException {
        for (String line : texts("select c.relname || ' ' || quote_ident(a.attname) from pg_class c"
                + " join pg_attribute a on a.attrelid = c.oid and a.attidentity <> '' where c.relnamespace = '" + SCHEMA
                + "'::regnamespace and c.relkind = 'r'")) {
            String[] part = line.split(" ", 2);
            texts("select setval(pg_get_serial_sequence('" + SCHEMA + "." + part[0] + "', '" + part[1].replace("\"", "")
                    + "'), greatest(coalesce(max(" + part[1] + "), 1), 1), max(" + part[1] + ") is not null) from "
                    + SCHEMA
                    + "." + part[0]);
        }
    }

    private CopyManager copies() throws SQLException {
        return connection.unwrap(PGConnection.class).getCopyAPI();
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Stays open for the next table. */
    private static final class Kept extends java.io.FilterOutputStream {
        Kept(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}

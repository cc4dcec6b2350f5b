package headertank.calc.fluid;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Published figures beside the tests: a comment line with the source, a header row, then rows. */
public final class Figures {

    /** One row by column name; a missing number is NaN. */
    public record Row(Map<String, String> cells) {
        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalArgumentException("no column " + column + " in " + cells.keySet());
            }
            return cell;
        }

        public double number(String column) {
            String cell = text(column);
            return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
        }

        public boolean has(String column) {
            return !text(column).isEmpty();
        }
    }

    private Figures() {}

    /** @param beside a class of the folder in which the file lies */
    public static List<Row> read(Class<?> beside, String file) {
        try (BufferedReader in =
                new BufferedReader(new InputStreamReader(beside.getResourceAsStream(file), StandardCharsets.UTF_8))) {
            String source = in.readLine();
            if (!source.startsWith("# ")) {
                throw new IllegalArgumentException(file + " names no source");
            }
            String[] names = in.readLine().split(",");
            List<Row> rows = new ArrayList<>();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
                Map<String, String> row = new TreeMap<>();
                for (int i = 0; i < names.length; i++) {
                    row.put(names[i], i < cells.length ? cells[i].replace("\"", "") : "");
                }
                rows.add(new Row(row));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package headertank.calc.duty;

import java.util.ArrayList;
import java.util.List;

/** Lines and cells of a comma-separated text with double quotes (the usual rules: "" inside quotes is one quote). */
final class CsvText {

    /**
     * One line.
     *
     * @param number its number in the text, from 1
     * @param cells its cells, trimmed; a single one for a line that begins with #
     */
    record Line(int number, List<String> cells) {

        boolean comment() {
            return cells.get(0).startsWith("#");
        }
    }

    private CsvText() {}

    /** @return the lines that are not blank; a line break inside quotes is not supported and ends the cell */
    static List<Line> lines(String text) {
        List<Line> lines = new ArrayList<>();
        String[] raw = (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r\n|\n|\r", -1);
        for (int i = 0; i < raw.length; i++) {
            String line = raw[i].trim();
            if (!line.isEmpty()) {
                lines.add(new Line(i + 1, line.startsWith("#") ? List.of(line) : cells(line)));
            }
        }
        return lines;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().trim());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().trim());
        return cells;
    }

    static String quoted(String cell) {
        return cell.contains(",") || cell.contains("\"") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}

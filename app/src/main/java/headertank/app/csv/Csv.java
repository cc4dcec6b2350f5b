package headertank.app.csv;

import java.util.ArrayList;
import java.util.List;

/** Comma-separated text after RFC 4180, its cells safe for spreadsheets; see {@link SafeCell}. */
public final class Csv {

    /** @param number of the line in the file on which it begins, from 1 */
    public record Line(int number, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /** Text that is no CSV. */
    public static final class BrokenException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final int line;

        BrokenException(int line) {
            super("line " + line);
            this.line = line;
        }

        public int line() {
            return line;
        }
    }

    private final String text;
    private final char separator;
    private int at;
    private int line = 1;

    private Csv(String text) {
        this.text = text;
        this.separator = separator(text);
    }

    /** A first line with semicolons and no comma was written by a spreadsheet that uses the comma for decimals. */
    private static char separator(String text) {
        int end = text.indexOf('\n');
        String first = end < 0 ? text : text.substring(0, end);
        return first.indexOf(';') >= 0 && first.indexOf(',') < 0 ? ';' : ',';
    }

    /**
     * Reads lines that hold something.
     *
     * @throws BrokenException when a quoted cell does not end, or ends amid its text
     */
    public static List<Line> read(String text) {
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
        Csv csv = new Csv(plain.replace("\r\n", "\n").replace('\r', '\n'));
        List<Line> lines = new ArrayList<>();
        while (csv.at < csv.text.length()) {
            Line read = csv.line();
            if (!read.isBlank()) {
                lines.add(read);
            }
        }
        return lines;
    }

    private Line line() {
        int began = line;
        List<String> cells = new ArrayList<>();
        do {
            cells.add(SafeCell.unguarded(cell()));
        } while (next(separator));
        if (at < text.length() && !next('\n')) {
            throw new BrokenException(line);
        }
        line++;
        return new Line(began, cells);
    }

    private boolean next(char expected) {
        if (at < text.length() && text.charAt(at) == expected) {
            at++;
            return true;
        }
        return false;
    }

    private String cell() {
        if (next('"')) {
            return quoted();
        }
        int start = at;
        while (at < text.length() && text.charAt(at) != separator && text.charAt(at) != '\n') {
            at++;
        }
        return text.substring(start, at);
    }

    private String quoted() {
        int began = line;
        StringBuilder cell = new StringBuilder();
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c != '"') {
                cell.append(c);
                line += c == '\n' ? 1 : 0;
            } else if (!next('"')) {
                return cell.toString();
            } else {
                cell.append('"');
            }
        }
        throw new BrokenException(began);
    }

    /** One line with its end. */
    public static String write(List<String> cells) {
        return String.join(",", cells.stream().map(Csv::written).toList()) + "\r\n";
    }

    private static String written(String cell) {
        String guarded = SafeCell.guarded(cell);
        boolean quote = guarded.chars().anyMatch(c -> c == ',' || c == ';' || c == '"' || c == '\n' || c == '\r');
        return quote ? '"' + guarded.replace("\"", "\"\"") + '"' : guarded;
    }
}

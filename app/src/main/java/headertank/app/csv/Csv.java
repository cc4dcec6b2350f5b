package headertank.app.csv;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategy;
import java.io.StringWriter;
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

    /** A line after the last one, which comes back as itself unless a quote before it is open. */
    private static final String END = "end";

    /** A spreadsheet of another locale separates by semicolons, tabs or bars: a cell with one of them is quoted. */
    private static final QuoteStrategy EVERY_SEPARATOR = new QuoteStrategy() {
        @Override
        public boolean quoteValue(int line, int cell, String value) {
            return value.chars().anyMatch(c -> c == ';' || c == '\t' || c == '|');
        }
    };

    private Csv() {}

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
        String plain = (text.startsWith("\ufeff") ? text.substring(1) : text)
                .replace("\r\n", "\n")
                .replace('\r', '\n');
        Records records = new Records();
        List<Line> lines;
        try {
            lines = reader(separator(plain)).build(records, plain + '\n' + END).stream()
                    .toList();
        } catch (CsvParseException e) {
            throw new BrokenException(records.began());
        }
        Line last = lines.get(lines.size() - 1);
        if (!last.cells().equals(List.of(END))) {
            throw new BrokenException(last.number());
        }
        return lines.subList(0, lines.size() - 1).stream()
                .filter(l -> !l.isBlank())
                .map(l -> new Line(
                        l.number(), l.cells().stream().map(SafeCell::unguarded).toList()))
                .toList();
    }

    /** Cells of one line that another program wrote, stripped; quotes that do not end as they should are let pass. */
    public static List<String> cells(String line, char separator) {
        try {
            return reader(separator).allowExtraCharsAfterClosingQuote(true).ofCsvRecord(line).stream()
                    .flatMap(r -> r.getFields().stream())
                    .map(String::strip)
                    .toList();
        } catch (CsvParseException e) {
            return List.of(line);
        }
    }

    private static CsvReader.CsvReaderBuilder reader(char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.NONE)
                .allowExtraFields(true)
                .allowMissingFields(true);
    }

    /** One line with its end. */
    public static String write(List<String> cells) {
        StringWriter line = new StringWriter();
        CsvWriter.builder()
                .bufferSize(0)
                .lineDelimiter(LineDelimiter.CRLF)
                .quoteStrategy(EVERY_SEPARATOR)
                .build(line)
                .writeRecord(cells.stream().map(SafeCell::guarded).toList());
        return line.toString();
    }

    /** Collects lines and remembers where the one began that is being read. */
    private static final class Records extends AbstractBaseCsvCallbackHandler<Line> {

        private final List<String> cells = new ArrayList<>();

        int began() {
            return (int) getStartingLineNumber();
        }

        @Override
        protected void handleBegin(long line) {
            cells.clear();
        }

        @Override
        protected void handleField(int index, char[] buffer, int offset, int length, boolean quoted) {
            cells.add(new String(buffer, offset, length));
        }

        @Override
        protected Line buildRecord() {
            return new Line(began(), cells);
        }
    }
}

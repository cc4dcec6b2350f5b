package headertank.app.log.file;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import headertank.app.log.file.LogRefused.Reason;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;

/** The rows of a log, one at a time: its cells stand in this object until the next one is asked for. */
public final class LogRows implements Closeable {

    private final LogHead head;
    private final LogLimits limits;
    private final LineFeed feed;
    private final CsvReader<Boolean> reader;
    private final CloseableIterator<Boolean> records;
    private final Row row = new Row();
    private long rows;

    public LogRows(LogSource source, LogHead head, LogLimits limits) throws IOException {
        this.head = head;
        this.limits = limits;
        feed = new LineFeed(LogEncoding.reader(source.open()), limits, head.separator(), head.lastBefore());
        reader = CsvReader.builder()
                .fieldSeparator(head.separator())
                .commentStrategy(CommentStrategy.NONE)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .build(row, feed);
        records = reader.iterator();
    }

    /**
     * Goes to the next row that holds anything.
     *
     * @return false after the last
     * @throws LogRefused when a line, a cell or the number of them passes what is allowed
     */
    public boolean next() throws IOException {
        try {
            do {
                if (!records.hasNext()) {
                    return false;
                }
                records.next();
            } while (filled() == 0);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } catch (CsvParseException e) {
            throw e.getCause() instanceof LogRefused refused ? refused : e;
        }
        if (++rows > limits.rows()) {
            throw new LogRefused(Reason.TOO_MANY_ROWS, line(), rows, limits.rows());
        }
        return true;
    }

    /** Number of the row's line, from 1. */
    public long line() {
        return feed.number();
    }

    /** Lines left out so far because they are comments. */
    public long comments() {
        return feed.comments();
    }

    /** How many cells the row has. */
    public int count() {
        return row.count;
    }

    /** Whether a quote did not end, or the row has not as many cells as there are columns. */
    public boolean isBroken() {
        int filled = filled();
        return feed.isBroken()
                || filled > head.headings().size()
                || row.count < Math.min(head.cells(), head.headings().size());
    }

    /** Whether the headings are written again, as loggers do when they start anew. */
    public boolean isHeadings() {
        List<Heading> headings = head.headings();
        if (head.headLine() == 0 || filled() < 2 || row.count < Math.min(head.cells(), headings.size())) {
            return false;
        }
        for (int i = 0; i < headings.size() && i < row.count; i++) {
            if (row.from[i] < row.to[i] && !isText(i, headings.get(i).text())) {
                return false;
            }
        }
        return true;
    }

    private boolean isText(int column, String text) {
        int n = row.to[column] - row.from[column];
        if (n != text.length()) {
            return false;
        }
        for (int i = 0; i < n; i++) {
            if (row.text[row.from[column] + i] != text.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** When the row was logged, in seconds since any moment; {@link CellValue#NONE} or {@link CellValue#BAD} when it does not say. */
    public double seconds(TimeColumn time) {
        int i = time.index();
        return i >= row.count
                ? CellValue.NONE
                : time.writing().seconds(row.text, row.from[i], row.to[i], time.secondsPerUnit(), head.commaGroups());
    }

    /** The number in a cell, {@link CellValue#NONE} or {@link CellValue#BAD}. */
    public double value(int column) {
        return column >= row.count
                ? CellValue.NONE
                : CellValue.of(row.text, row.from[column], row.to[column], head.commaGroups());
    }

    /** A cell as written. */
    public String text(int column) {
        return column >= row.count ? "" : new String(row.text, row.from[column], row.to[column] - row.from[column]);
    }

    private int filled() {
        int n = row.count;
        while (n > 0 && row.from[n - 1] == row.to[n - 1]) {
            n--;
        }
        return n;
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }

    /** Keeps the cells of a record without making objects of them. */
    private final class Row extends AbstractBaseCsvCallbackHandler<Boolean> {

        private char[] text = new char[1024];
        private int[] from = new int[32];
        private int[] to = new int[32];
        private int count;
        private int used;

        @Override
        protected void handleBegin(long line) {
            count = 0;
            used = 0;
        }

        @Override
        protected void handleField(int index, char[] buffer, int offset, int length, boolean quoted) {
            int a = offset;
            int b = offset + length;
            while (a < b && isBlank(buffer[a])) {
                a++;
            }
            while (a < b && isBlank(buffer[b - 1])) {
                b--;
            }
            int n = b - a;
            if (n > limits.cellLength()) {
                throw new LogRefused(Reason.CELL_TOO_LONG, line(), n, limits.cellLength());
            }
            if (count >= limits.columns()) {
                throw new LogRefused(Reason.TOO_MANY_COLUMNS, line(), count + 1L, limits.columns());
            }
            if (count == from.length) {
                from = Arrays.copyOf(from, 2 * count);
                to = Arrays.copyOf(to, 2 * count);
            }
            if (used + n > text.length) {
                text = Arrays.copyOf(text, Math.max(2 * text.length, used + n));
            }
            System.arraycopy(buffer, a, text, used, n);
            from[count] = used;
            used += n;
            to[count] = used;
            count++;
        }

        private static boolean isBlank(char c) {
            return c <= ' ' || c == '\u00a0' || c == '\u202f';
        }

        @Override
        protected Boolean buildRecord() {
            return Boolean.TRUE;
        }
    }
}

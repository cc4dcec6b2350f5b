package headertank.app.carlog;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import headertank.app.log.file.Heading;
import headertank.app.log.file.LogHead;
import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogRows;
import headertank.app.log.file.LogSource;
import headertank.app.log.file.TimeColumn;
import headertank.app.log.read.LogMapping;
import headertank.app.log.read.LogMapping.Chosen;
import headertank.app.log.read.LogSummary;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * The text of a log as it is kept: UTF-8, lines that end in a line feed. Columns that tell where the car was are left out, and with
 * them all lines of which nobody can tell whether they hold a place: those before the headings, comments, broken rows.
 *
 * @param text what is kept
 * @param columns of the log, by their places in what is kept; empty where a column is left out
 * @param leftOut headings of the columns that are left out
 */
record KeptText(String text, List<Optional<Integer>> columns, List<String> leftOut) {

    private static final int LONGEST = 64_000_000;

    KeptText {
        columns = List.copyOf(columns);
        leftOut = List.copyOf(leftOut);
    }

    /** @param positions whether to keep columns that tell where the car was */
    static KeptText of(LogSource log, LogSummary summary, boolean positions) throws IOException {
        LogHead head = summary.head();
        List<Integer> places = positions ? List.of() : summary.positions();
        List<Optional<Integer>> columns = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < head.headings().size(); i++) {
            columns.add(places.contains(i) ? Optional.empty() : Optional.of(next++));
        }
        List<String> leftOut =
                places.stream().map(i -> head.headings().get(i).text()).toList();
        String text = places.isEmpty() ? whole(log) : without(log, head, columns);
        return new KeptText(text, columns, leftOut);
    }

    /** The same whether a file was sent or its text came back from a form. */
    private static String whole(LogSource log) throws IOException {
        return log.text(LONGEST)
                .orElseThrow()
                .replace("\r\n", "\n")
                .replace('\r', '\n')
                .replaceAll("^\n+|\n+$", "")
                .concat("\n");
    }

    private static String without(LogSource log, LogHead head, List<Optional<Integer>> columns) throws IOException {
        StringWriter text = new StringWriter();
        CsvWriter writer = CsvWriter.builder()
                .bufferSize(0)
                .fieldSeparator(head.separator() == ' ' ? '\t' : head.separator())
                .lineDelimiter(LineDelimiter.LF)
                .build(text);
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).isPresent()) {
                cells.add(written(head.headings().get(i)));
            }
        }
        writer.writeRecord(cells);
        try (LogRows rows = new LogRows(log, head, LogLimits.USUAL)) {
            while (rows.next()) {
                if (!rows.isBroken() && !rows.isHeadings()) {
                    cells.clear();
                    for (int i = 0; i < columns.size(); i++) {
                        if (columns.get(i).isPresent()) {
                            cells.add(rows.text(i));
                        }
                    }
                    writer.writeRecord(cells);
                }
            }
        }
        return text.toString();
    }

    /** A unit that stood in a line of its own comes behind the heading. */
    private static String written(Heading heading) {
        String text = heading.text().replaceAll("[\\r\\n]+", " ");
        return heading.from() == Heading.From.ROW ? text + " [" + heading.unit() + "]" : text;
    }

    /** The same columns in what is kept; empty when the time is left out. */
    Optional<LogMapping> mapping(LogMapping ofTheLog) {
        TimeColumn time = ofTheLog.time();
        List<Chosen> kept = new ArrayList<>();
        for (Chosen c : ofTheLog.columns()) {
            columns.get(c.column()).ifPresent(i -> kept.add(new Chosen(c.quantity(), i, c.unit())));
        }
        return columns.get(time.index())
                .map(i -> new LogMapping(TimeColumn.chosen(i, time.writing(), time.unit()), kept));
    }

    LogSource source() {
        return LogSource.of(text);
    }

    static byte[] gzip(String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    static LogSource unzipped(byte[] gzip) {
        return () -> new GZIPInputStream(new ByteArrayInputStream(gzip));
    }
}

package headertank.calc.duty;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import java.util.ArrayList;
import java.util.List;

/** Lines and cells of a comma-separated text with double quotes; a cell ends with its line. */
final class CsvText {

    /** A line after each one, which comes back as itself unless a quote before it is open. */
    private static final String END = "end";

    /**
     * One line.
     *
     * @param number its number in the text, from 1
     * @param cells its cells, trimmed; a single one for a line that begins with #, none for one whose quotes do not end where a
     *     cell ends
     */
    record Line(int number, List<String> cells) {

        boolean comment() {
            return !cells.isEmpty() && cells.get(0).startsWith("#");
        }

        boolean broken() {
            return cells.isEmpty();
        }
    }

    private CsvText() {}

    /** @return a word of a file as an argument; nothing for an empty one */
    static MessageArgument word(String text) {
        return text.isEmpty() ? Message.NONE : new MessageArgument.Text(text);
    }

    /** @return a number as a file writes it */
    static MessageArgument word(double number) {
        return word(Double.isFinite(number) ? CsvColumn.plain(number) : String.valueOf(number));
    }

    /** @return the lines that are not blank */
    static List<Line> lines(String text) {
        CsvReader.CsvReaderBuilder reader = CsvReader.builder()
                .commentStrategy(CommentStrategy.NONE)
                .trimWhitespacesAroundQuotes(true)
                .allowExtraFields(true)
                .allowMissingFields(true);
        List<Line> lines = new ArrayList<>();
        String[] raw = (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r\n|\n|\r", -1);
        for (int i = 0; i < raw.length; i++) {
            String line = raw[i].trim();
            if (!line.isEmpty()) {
                lines.add(new Line(i + 1, line.startsWith("#") ? List.of(line) : cells(reader, line)));
            }
        }
        return lines;
    }

    private static List<String> cells(CsvReader.CsvReaderBuilder reader, String line) {
        try {
            List<CsvRecord> records =
                    reader.ofCsvRecord(line + "\n" + END).stream().toList();
            return records.size() == 2
                    ? records.get(0).getFields().stream().map(String::trim).toList()
                    : List.of();
        } catch (CsvParseException e) {
            return List.of();
        }
    }
}

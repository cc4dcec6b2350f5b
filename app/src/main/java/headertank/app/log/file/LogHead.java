package headertank.app.log.file;

import headertank.app.csv.Csv;
import headertank.app.log.file.LogRefused.Reason;
import headertank.app.stored.Sha256;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How a log is laid out, found from its first lines.
 *
 * @param separator of cells; a space stands for any run of spaces
 * @param commaGroups whether a comma sets thousands apart; else it marks decimals like a point
 * @param headings one for each column; named by their number where the file has none
 * @param headLine number of the line of headings, 0 when there is none
 * @param lastBefore number of the last line before the rows
 * @param cells how many cells an ordinary row has; one more than headings when rows end in a separator
 * @param time the column that tells when, empty when none rises
 * @param rows the first rows, at most {@link #SAMPLED}, for guesses and to show
 */
public record LogHead(
        char separator,
        boolean commaGroups,
        List<Heading> headings,
        long headLine,
        long lastBefore,
        int cells,
        Optional<TimeColumn> time,
        List<List<String>> rows) {

    private static final int SAMPLED = 250;
    private static final int SAMPLED_CHARACTERS = 2_000_000;
    private static final char[] SEPARATORS = {';', '\t', '|', ',', ' '};
    private static final int MOST_BETWEEN = 4;
    private static final int MOST_JOINED = 60;

    public LogHead {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** The same with the column of time that somebody chose. */
    public LogHead with(TimeColumn chosen) {
        return new LogHead(separator, commaGroups, headings, headLine, lastBefore, cells, Optional.of(chosen), rows);
    }

    /** Same for files with the same columns in the same order, whatever stands in them. */
    public String columnSet() {
        StringBuilder text = new StringBuilder();
        for (Heading h : headings) {
            text.append(h.text()).append('\u001f').append(h.unit()).append('\u001e');
        }
        return Sha256.hex(text.toString());
    }

    /** Whether the first rows hold more words than numbers in a column. */
    public boolean isText(int column) {
        int words = 0;
        int numbers = 0;
        for (List<String> row : rows) {
            String cell = column < row.size() ? row.get(column) : "";
            if (!cell.isEmpty()) {
                boolean word = CellValue.of(cell, commaGroups) == CellValue.BAD;
                words += word ? 1 : 0;
                numbers += word ? 0 : 1;
            }
        }
        return words > numbers;
    }

    /** @throws LogRefused when there are no rows of numbers */
    public static LogHead of(LogSource source, LogLimits limits) throws IOException {
        List<String> lines = new ArrayList<>();
        List<Long> numbers = new ArrayList<>();
        try (Reader text = LogEncoding.reader(source.open());
                LineFeed feed = new LineFeed(text, limits, ',', 0)) {
            int characters = 0;
            String line = feed.text();
            while (line != null) {
                lines.add(line);
                numbers.add(feed.number());
                characters += line.length();
                line = lines.size() < SAMPLED && characters < SAMPLED_CHARACTERS ? feed.text() : null;
            }
        }
        joinHeadings(lines, numbers);
        if (lines.stream().allMatch(String::isBlank)) {
            throw new LogRefused(Reason.EMPTY);
        }
        if (isBinary(lines)) {
            throw new LogRefused(Reason.NOT_TEXT);
        }
        Layout best = null;
        for (char separator : SEPARATORS) {
            Layout layout = Layout.of(lines, separator);
            if (best == null || layout.score() > best.score()) {
                best = layout;
            }
        }
        if (best.score() <= 0) {
            throw new LogRefused(Reason.NO_ROWS);
        }
        return best.head(lines, numbers, limits);
    }

    /**
     * Joins lines that a quoted heading is written on: the first opens a quote that one of the next few shuts, and none of them
     * looks like a row.
     */
    private static void joinHeadings(List<String> lines, List<Long> numbers) {
        for (int i = 0; i < lines.size(); i++) {
            int end = i;
            boolean open = quotes(lines.get(i)) % 2 == 1;
            while (open && end + 1 < Math.min(lines.size(), i + MOST_JOINED) && !startsAsRow(lines.get(end + 1))) {
                end++;
                open = quotes(lines.get(end)) % 2 == 0;
            }
            if (end > i && !open) {
                lines.set(i, String.join(" ", lines.subList(i, end + 1)));
                numbers.set(i, numbers.get(end));
                lines.subList(i + 1, end + 1).clear();
                numbers.subList(i + 1, end + 1).clear();
            }
        }
    }

    private static int quotes(String line) {
        return CellValue.count(line, '"');
    }

    private static boolean startsAsRow(String line) {
        return line.isEmpty() || Character.isDigit(line.charAt(0));
    }

    private static boolean isBinary(List<String> lines) {
        long all = 0;
        long odd = 0;
        for (String line : lines) {
            all += line.length();
            odd += line.chars()
                    .filter(c -> c < ' ' && c != '\t' || c == 0xFFFD || c >= 0x7F && c < 0xA0 && c != 0x80)
                    .count();
        }
        return odd > 10 && odd > 0.05 * all;
    }

    private static List<String> cells(String line, char separator) {
        String text = separator == ' ' ? line.strip().replaceAll("[ \\t]+", " ") : line;
        return Csv.cells(text, separator);
    }

    private static boolean isComment(String line) {
        String text = line.strip();
        return text.startsWith("#") || text.startsWith("//");
    }

    private static boolean isValue(String cell) {
        return CellValue.of(cell, false) != CellValue.BAD || TimeWriting.isTime(cell);
    }

    private static int filled(List<String> cells) {
        int n = cells.size();
        while (n > 0 && cells.get(n - 1).isEmpty()) {
            n--;
        }
        return n;
    }

    /**
     * What the lines are when they are parted in one way.
     *
     * @param first index of the first row
     * @param width how many cells rows have most often
     * @param alike rows with that many, each by the share of its cells that are values
     */
    private record Layout(char separator, List<List<String>> table, int first, int width, double alike) {

        static Layout of(List<String> lines, char separator) {
            List<List<String>> table =
                    lines.stream().map(l -> LogHead.cells(l, separator)).toList();
            int[] widths = new int[table.size()];
            for (int i = 0; i < widths.length; i++) {
                widths[i] = isComment(lines.get(i)) || !isRow(table.get(i))
                        ? 0
                        : table.get(i).size();
            }
            int width = mostOften(widths);
            int first = -1;
            double alike = 0;
            for (int i = 0; i < widths.length; i++) {
                if (width > 1 && widths[i] == width) {
                    first = first < 0 ? i : first;
                    alike += share(table.get(i));
                }
            }
            return new Layout(separator, table, first, width, alike);
        }

        /** A row holds at least two values, one of them in digits, and hardly anything else. */
        private static boolean isRow(List<String> cells) {
            long values = cells.stream().filter(c -> !c.isEmpty() && isValue(c)).count();
            boolean digits = cells.stream().anyMatch(c -> c.chars().anyMatch(Character::isDigit) && isValue(c));
            return digits && values >= 2 && share(cells) >= 0.5;
        }

        private static double share(List<String> cells) {
            long told = cells.stream().filter(c -> !c.isEmpty()).count();
            long values = cells.stream().filter(c -> !c.isEmpty() && isValue(c)).count();
            return told == 0 ? 0 : (double) values / told;
        }

        private static int mostOften(int[] widths) {
            int best = 0;
            int most = 0;
            for (int w : widths) {
                int n = 0;
                for (int other : widths) {
                    n += other == w ? 1 : 0;
                }
                if (w > 1 && (n > most || n == most && w > best)) {
                    most = n;
                    best = w;
                }
            }
            return best;
        }

        /** Many rows of the same width, and a line of headings of that width above them. */
        double score() {
            return first < 0 ? 0 : alike * (head() >= 0 ? 2.0 : 1.0) * Math.min(3, width);
        }

        /** Index of the line of headings; -1 for none. */
        private int head() {
            int best = -1;
            int bestWords = 0;
            int seen = 0;
            for (int i = first - 1; i >= 0 && seen < MOST_BETWEEN; i--) {
                List<String> cells = table.get(i);
                int filled = filled(cells);
                if (filled == 0) {
                    continue;
                }
                seen++;
                boolean wide = filled <= width && (filled >= width - 1 || cells.size() == width);
                long words = cells.stream()
                        .filter(c -> c.matches("(?s).*\\p{L}.*"))
                        .distinct()
                        .count();
                boolean names = words >= 0.5 * filled && !Heading.areUnits(cells);
                if (wide && names && words > bestWords) {
                    best = i;
                    bestWords = (int) words;
                }
            }
            return best;
        }

        LogHead head(List<String> lines, List<Long> numbers, LogLimits limits) {
            if (width > limits.columns()) {
                throw new LogRefused(Reason.TOO_MANY_COLUMNS, first + 1L, width, limits.columns());
            }
            int at = head();
            if (at < 0) {
                refuseTwiceUsedComma();
            }
            List<List<String>> rows = new ArrayList<>();
            for (int i = first; i < table.size(); i++) {
                if (table.get(i).size() == width && !isComment(lines.get(i))) {
                    rows.add(table.get(i));
                }
            }
            boolean groups = commaGroups(rows);
            List<String> names = at < 0 ? Collections.nCopies(width, "") : table.get(at);
            List<String> units = units(at);
            List<Heading> headings = new ArrayList<>();
            int columns = at < 0 ? width : Math.max(filled(names), rowsFilled(rows));
            for (int c = 0; c < columns; c++) {
                String name = c < names.size() && !names.get(c).isBlank() ? names.get(c) : "column " + (c + 1);
                headings.add(Heading.of(brief(name, limits), c < units.size() ? units.get(c) : "", unitIn(rows, c)));
            }
            Optional<TimeColumn> time = TimeColumn.find(headings, rows, groups);
            long headLine = at < 0 ? 0 : numbers.get(at);
            long lastBefore = first == 0 ? 0 : numbers.get(first - 1);
            return new LogHead(separator, groups, headings, headLine, lastBefore, width, time, rows);
        }

        private static String brief(String name, LogLimits limits) {
            if (name.length() > limits.cellLength()) {
                throw new LogRefused(Reason.CELL_TOO_LONG, 0, name.length(), limits.cellLength());
            }
            return name;
        }

        /** Headings of half the width right above the rows tell that a comma marks decimals and parts cells too. */
        private void refuseTwiceUsedComma() {
            for (int i = first - 1; separator == ',' && i >= Math.max(0, first - MOST_BETWEEN); i--) {
                int n = filled(table.get(i));
                boolean names = table.get(i).stream().allMatch(c -> c.matches(".*\\p{L}.*"));
                if (n >= 2 && n < width && names) {
                    throw new LogRefused(Reason.COMMA_TWICE, first + 1L, width, n);
                }
            }
        }

        private static int rowsFilled(List<List<String>> rows) {
            return rows.stream().mapToInt(LogHead::filled).max().orElse(0);
        }

        /** The line between headings and rows that holds units. */
        private List<String> units(int head) {
            for (int i = head + 1; head >= 0 && i < first; i++) {
                if (table.get(i).size() >= 2 && Heading.areUnits(table.get(i))) {
                    return table.get(i);
                }
            }
            return List.of();
        }

        private static String unitIn(List<List<String>> rows, int column) {
            Set<String> units = new HashSet<>();
            for (List<String> row : rows) {
                if (column < row.size() && !row.get(column).isEmpty()) {
                    units.add(CellValue.unit(row.get(column)));
                }
            }
            return units.size() == 1 ? units.iterator().next() : "";
        }

        private boolean commaGroups(List<List<String>> rows) {
            return separator != ';'
                    && rows.stream().flatMap(List::stream).anyMatch(c -> c.matches("[+-]?\\d{1,3}(,\\d{3})+\\.\\d+"))
                    && rows.stream().flatMap(List::stream).noneMatch(c -> c.matches("[+-]?\\d+,(\\d{1,2}|\\d{4,})"));
        }
    }
}

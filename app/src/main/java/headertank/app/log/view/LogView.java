package headertank.app.log.view;

import java.util.List;

/**
 * A log as a page shows it before anything is done with it.
 *
 * @param columnSet what the choices are about
 * @param facts sentences on the whole
 * @param time how time is read
 * @param lines what is looked for, each with its column
 * @param options the columns of the file
 * @param bad rows that were left out, the first of them
 * @param headings of the first rows
 * @param rows the first rows as written
 */
public record LogView(
        String columnSet,
        List<String> facts,
        Time time,
        List<Line> lines,
        List<Option> options,
        List<Bad> bad,
        List<String> headings,
        List<List<String>> rows) {

    public LogView {
        facts = List.copyOf(facts);
        lines = List.copyOf(lines);
        options = List.copyOf(options);
        bad = List.copyOf(bad);
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** A column of the file. */
    public record Option(String value, String heading) {}

    /** @param value index of the column, empty for none */
    public record Time(String value, String writing, String unit, List<String> units, String why) {}

    /**
     * @param key of the quantity
     * @param value index of its column, empty for none
     * @param sure how sure the guess is; empty when somebody chose
     * @param why what it rests on
     * @param range least and greatest reading
     */
    public record Line(
            String key,
            String name,
            String value,
            String unit,
            List<String> units,
            String sure,
            String why,
            String range) {}

    /** A row that was left out, or a cell of it. */
    public record Bad(long line, String column, String value, String fault) {}
}

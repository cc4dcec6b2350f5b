package headertank.app.log.view;

import headertank.app.log.file.Heading;
import headertank.app.log.file.LogHead;
import headertank.app.log.file.TimeColumn;
import headertank.app.log.file.TimeWriting;
import headertank.app.log.read.ColumnGuess;
import headertank.app.log.read.LogMapping;
import headertank.app.log.read.LogMapping.Chosen;
import headertank.app.log.read.LogQuantity;
import headertank.app.log.read.LogSummary;
import headertank.app.unit.Dimension;
import headertank.app.unit.Scaling;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What somebody said about columns, as a page sends it; whatever is not said is guessed. It is about files with one set of columns
 * and says nothing of others.
 */
public final class MappingForm {

    /** Name of the field with the set of columns. */
    static final String COLUMN_SET = "columnSet";

    static final String TIME = "TIME";
    private static final String COLUMN = "column-";
    private static final String UNIT = "unit-";
    private static final String WRITING = "writing-TIME";

    private final Map<String, String> said;

    private MappingForm(Map<String, String> said) {
        this.said = Map.copyOf(said);
    }

    /** @param parameters of a request; those of other fields are passed over */
    public static MappingForm of(Map<String, String> parameters) {
        return new MappingForm(parameters);
    }

    private boolean isAbout(LogHead head) {
        return head.columnSet().equals(said.get(COLUMN_SET));
    }

    /** The column of time that was chosen for this file; empty when none was. */
    public Optional<TimeColumn> time(LogHead head) {
        Optional<Integer> column = isAbout(head) ? column(TIME, head) : Optional.empty();
        return column.map(i -> TimeColumn.chosen(
                i, writing().orElse(head.time().map(TimeColumn::writing).orElse(TimeWriting.NUMBER)), unit(TIME)));
    }

    private Optional<TimeWriting> writing() {
        for (TimeWriting w : TimeWriting.values()) {
            if (w.name().equals(said.get(WRITING))) {
                return Optional.of(w);
            }
        }
        return Optional.empty();
    }

    private String unit(String of) {
        return said.getOrDefault(UNIT + of, "");
    }

    /** Index of the column that was chosen; empty when none was, or none that the file has. */
    private Optional<Integer> column(String of, LogHead head) {
        String text = said.getOrDefault(COLUMN + of, "");
        if (!text.matches("\\d{1,5}")) {
            return Optional.empty();
        }
        int column = Integer.parseInt(text);
        return column < head.headings().size() ? Optional.of(column) : Optional.empty();
    }

    /** What is said, and guessed where nothing is said; empty when no column tells the time. */
    public Optional<LogMapping> mapping(LogSummary summary) {
        LogHead head = summary.head();
        Map<LogQuantity, Chosen> chosen = new EnumMap<>(LogQuantity.class);
        for (ColumnGuess g : summary.guesses()) {
            chosen.put(g.quantity(), new Chosen(g.quantity(), g.column(), g.unit()));
        }
        if (isAbout(head)) {
            for (LogQuantity q : LogQuantity.values()) {
                if (said.containsKey(COLUMN + q)) {
                    Optional<Integer> column = column(q.name(), head);
                    chosen.remove(q);
                    column.ifPresent(i -> chosen.put(q, new Chosen(q, i, scaling(q, i, summary))));
                }
            }
        }
        List<Chosen> columns = new ArrayList<>(chosen.values());
        return time(head).or(head::time).map(t -> new LogMapping(t, columns));
    }

    /** The unit that was chosen, else the one that was guessed or written, else the usual one. */
    private Scaling scaling(LogQuantity q, int column, LogSummary summary) {
        Dimension d = q.dimension();
        Optional<Scaling> said = Scaling.of(d).stream()
                .filter(s -> s.symbol().equals(unit(q.name())))
                .findFirst();
        Heading heading = summary.head().headings().get(column);
        return said.or(() -> summary.guess(q).filter(g -> g.column() == column).map(ColumnGuess::unit))
                .or(() -> Scaling.find(heading.unit(), d))
                .orElseGet(() -> Scaling.of(d).get(0));
    }
}

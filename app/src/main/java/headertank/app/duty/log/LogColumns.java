package headertank.app.duty.log;

import headertank.app.duty.DutyFault;
import headertank.app.duty.DutyText;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which column of a log holds what, and what one of its units is in SI. */
final class LogColumns {

    /** The quantities that a log must hold. */
    enum Quantity {
        TIME(Dimension.DURATION, "time( stamp)?|timestamp|t|elapsed time|log time", ""),
        SPEED(Dimension.SPEED, "(road|vehicle|ground|car|gps|wheel) ?speed|speed|velocity|v", ""),
        ENGINE(Dimension.ROTATION, "engine ?(speed|rpm|revs)|rpm|revs|n engine", "rpm"),
        LOAD(Dimension.FRACTION, "(engine ?)?load|throttle( position)?|tps|pedal( position)?|torque|power", "");

        final Dimension dimension;
        final Pattern usual;
        final String usualUnit;

        Quantity(Dimension dimension, String usual, String usualUnit) {
            this.dimension = dimension;
            this.usual = Pattern.compile(usual);
            this.usualUnit = usualUnit;
        }
    }

    /** @param siPerUnit SI units in one unit of the column */
    record Column(int index, String heading, String unit, double siPerUnit) {}

    private static final Pattern HEADING = Pattern.compile("([^\\[(]*?)\\s*(?:[\\[(]([^\\])]*)[\\])])?\\s*");

    private final List<String> headings;
    private final List<String> unitRow;

    /** @param unitRow units below the headings, empty when the log has no such line */
    LogColumns(List<String> headings, List<String> unitRow) {
        this.headings = List.copyOf(headings);
        this.unitRow = List.copyOf(unitRow);
    }

    /** Where the heading stands: the asked one, else a usual one. */
    static Optional<Integer> find(List<String> headings, Quantity quantity, String asked) {
        for (int i = 0; i < headings.size(); i++) {
            boolean found = asked.isEmpty()
                    ? quantity.usual.matcher(name(headings.get(i))).matches()
                    : headings.get(i).equalsIgnoreCase(asked)
                            || name(headings.get(i)).equals(asked.toLowerCase(Locale.ROOT));
            if (found) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static String name(String heading) {
        Matcher m = HEADING.matcher(heading);
        return (m.matches() ? m.group(1) : heading).strip().replace('_', ' ').toLowerCase(Locale.ROOT);
    }

    /**
     * @param asked heading that somebody typed, or empty
     * @param unit unit that somebody chose, or empty
     * @param line number of the line with the headings
     * @param faults takes what is wrong
     */
    Optional<Column> column(
            Quantity quantity, String asked, String unit, int line, DutyText words, List<DutyFault> faults) {
        String place = words.say("duties.log." + quantity.name());
        Optional<Integer> index = find(headings, quantity, asked);
        if (index.isEmpty()) {
            faults.add(new DutyFault(line, place, asked, words.say("duties.log.headings", shown())));
            return Optional.empty();
        }
        String heading = headings.get(index.get());
        String written = unit.isEmpty() ? written(index.get(), quantity) : unit;
        if (written.isEmpty()) {
            faults.add(new DutyFault(line, place, heading, words.say("duties.log.no-unit")));
            return Optional.empty();
        }
        try {
            double si = Units.parse("1 " + written, quantity.dimension, UnitSystem.METRIC);
            return Optional.of(new Column(index.get(), heading, written, si));
        } catch (UnitException e) {
            faults.add(new DutyFault(line, place, heading, String.join(", ", e.accepted())));
            return Optional.empty();
        }
    }

    private String written(int index, Quantity quantity) {
        Matcher m = HEADING.matcher(headings.get(index));
        String inHeading = m.matches() && m.group(2) != null ? m.group(2).strip() : "";
        String below = index < unitRow.size() ? unitRow.get(index).strip() : "";
        return !inHeading.isEmpty() ? inHeading : !below.isEmpty() ? below : quantity.usualUnit;
    }

    private String shown() {
        List<String> some = new ArrayList<>(headings.subList(0, Math.min(30, headings.size())));
        return String.join(", ", some);
    }
}

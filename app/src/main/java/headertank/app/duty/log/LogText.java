package headertank.app.duty.log;

import headertank.app.csv.Csv;
import headertank.app.duty.DutyFault;
import headertank.app.duty.DutyText;
import headertank.app.duty.log.LogColumns.Column;
import headertank.app.duty.log.LogColumns.Quantity;
import headertank.calc.duty.LoggedLap;
import headertank.calc.duty.LoggedLap.Sample;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads a log of time, road speed, engine speed and load as text with commas, semicolons or tabs. Lines before the headings are
 * skipped; a line of units may follow them. With semicolons or tabs a decimal may be written with a comma.
 */
final class LogText {

    private static final int MOST_FAULTS = 50;
    private static final int MOST_BEFORE_HEADINGS = 60;

    private static final String NUMBER = "[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?";

    /** A sensor of throttle or load strays a little beyond its ends; this much is taken for the end [-]. */
    private static final double STRAY = 0.1;

    private final LogForm form;
    private final double ratedRadPerS;
    private final DutyText words;
    private final List<DutyFault> faults = new ArrayList<>();
    private final List<Sample> samples = new ArrayList<>();
    private char separator = ',';

    /** @param ratedRadPerS engine speed of rated power [rad/s] */
    LogText(LogForm form, double ratedRadPerS, DutyText words) {
        this.form = form;
        this.ratedRadPerS = ratedRadPerS;
        this.words = words;
    }

    List<DutyFault> faults() {
        return faults;
    }

    /** The samples; empty with faults when the text is no such log. */
    List<Sample> read() {
        String[] lines = form.log().split("\r\n|\n|\r", -1);
        int at = headings(lines);
        if (at < 0) {
            faults.add(new DutyFault(
                    0, words.say("duties.log.head"), lines[0].strip(), words.say("duties.log.head.allowed")));
            return List.of();
        }
        List<String> headings = cells(lines[at]);
        boolean hasUnits = at + 1 < lines.length
                && cells(lines[at + 1]).stream().noneMatch(c -> number(c).matches(NUMBER))
                && !lines[at + 1].isBlank();
        LogColumns columns = new LogColumns(headings, hasUnits ? cells(lines[at + 1]) : List.of());
        Map<Quantity, Column> found = new EnumMap<>(Quantity.class);
        for (Quantity q : Quantity.values()) {
            columns.column(q, asked(q), unit(q), at + 1, words, faults).ifPresent(c -> found.put(q, c));
        }
        if (found.size() < Quantity.values().length) {
            return List.of();
        }
        for (int i = at + (hasUnits ? 2 : 1); i < lines.length && faults.size() < MOST_FAULTS; i++) {
            if (!lines[i].isBlank()) {
                row(i + 1, cells(lines[i]), found);
            }
        }
        if (faults.isEmpty() && (samples.size() < LoggedLap.FEWEST || samples.size() > LoggedLap.MOST)) {
            faults.add(new DutyFault(
                    0,
                    words.say("duties.log.lines"),
                    String.valueOf(samples.size()),
                    words.say("duties.log.range", LoggedLap.FEWEST, LoggedLap.MOST, "")));
        }
        return faults.isEmpty() ? samples : List.of();
    }

    /** The first line in which every column is found, or as many as the later message can name. */
    private int headings(String[] lines) {
        int best = -1;
        int most = 1;
        for (int i = 0; i < Math.min(lines.length, MOST_BEFORE_HEADINGS); i++) {
            for (char c : new char[] {',', ';', '\t'}) {
                List<String> cells = Csv.cells(lines[i], c);
                int found = (int) Arrays.stream(Quantity.values())
                        .filter(q -> LogColumns.find(cells, q, asked(q)).isPresent())
                        .count();
                if (found > most) {
                    most = found;
                    best = i;
                    separator = c;
                }
            }
        }
        return best;
    }

    private void row(int line, List<String> cells, Map<Quantity, Column> columns) {
        double time = value(line, cells, columns.get(Quantity.TIME), -1e9, 1e9);
        double speed = value(line, cells, columns.get(Quantity.SPEED), 0, 90);
        double engine = value(line, cells, columns.get(Quantity.ENGINE), 0, 1.2 * ratedRadPerS);
        double load = value(line, cells, columns.get(Quantity.LOAD), -STRAY, 1 + STRAY);
        if (Double.isNaN(time + speed + engine + load)) {
            return;
        }
        if (!samples.isEmpty() && time <= samples.get(samples.size() - 1).timeS()) {
            Column c = columns.get(Quantity.TIME);
            double before = samples.get(samples.size() - 1).timeS() / c.siPerUnit();
            faults.add(new DutyFault(
                    line, c.heading(), cells.get(c.index()), words.say("duties.log.rising", plain(before))));
            return;
        }
        double share = engine / ratedRadPerS;
        double full = Math.max(0, Math.min(1, load));
        double power = form.meaning() == LogForm.Meaning.POWER ? full : Math.min(1, full * share);
        samples.add(new Sample(time, speed, share, power));
    }

    private double value(int line, List<String> cells, Column c, double leastSi, double mostSi) {
        String typed = c.index() < cells.size() ? cells.get(c.index()) : "";
        String text = number(typed);
        double si = text.matches(NUMBER) ? Double.parseDouble(text) * c.siPerUnit() : Double.NaN;
        if (!(si >= leastSi && si <= mostSi)) {
            faults.add(new DutyFault(
                    line,
                    c.heading(),
                    typed,
                    words.say(
                            "duties.log.range",
                            Math.rint(leastSi / c.siPerUnit()),
                            Math.rint(mostSi / c.siPerUnit()),
                            c.unit())));
            return Double.NaN;
        }
        return si;
    }

    private String number(String cell) {
        return separator == ',' ? cell : cell.replace(',', '.');
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    private List<String> cells(String line) {
        return Csv.cells(line, separator);
    }

    private String asked(Quantity q) {
        return switch (q) {
            case TIME -> form.timeColumn();
            case SPEED -> form.speedColumn();
            case ENGINE -> form.engineColumn();
            case LOAD -> form.loadColumn();
        };
    }

    private String unit(Quantity q) {
        return switch (q) {
            case TIME -> form.timeUnit();
            case SPEED -> form.speedUnit();
            case ENGINE -> "";
            case LOAD -> form.loadUnit();
        };
    }
}

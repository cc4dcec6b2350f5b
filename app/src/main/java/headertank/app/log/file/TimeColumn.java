package headertank.app.log.file;

import headertank.app.language.EditDistance;
import headertank.app.unit.Dimension;
import headertank.app.unit.Scaling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The column that tells when a row was logged.
 *
 * @param index from 0
 * @param secondsPerUnit of a number; 1 for a clock or a date
 * @param unit symbol of the unit; empty for a clock or a date
 * @param why what it was chosen for
 */
public record TimeColumn(int index, TimeWriting writing, double secondsPerUnit, String unit, Why why) {

    /** What the choice rests on, the strongest first. */
    public enum Why {
        /** Name and unit say so, or it is written as a clock or a date. */
        NAME_AND_UNIT,
        /** The name says so; the unit follows from the steps between rows. */
        NAME,
        /** Nothing but that its values rise. */
        RISES,
        /** Somebody chose it. */
        CHOSEN
    }

    private static final Pattern NAMES = Pattern.compile(
            "((log|elapsed|run|engine run|running|session|lap|rel|relative|abs|absolute|utc|gps|local|device|recording)"
                    + " )*(time ?stamp|times?|timer|uptime|t|zeit|zeitstempel|uhrzeit|laufzeit|messzeit|date ?time"
                    + "|datum uhrzeit|date time|datum zeit|seconds|sekunden|millis|clock|time of day)"
                    + "( (hh mm ss.*|h m s|since start|elapsed|stamp|utc|sec|local|abs|rel|of day|ms|offset))*");

    /** Words of columns that are about times but are none of the row's. */
    private static final Set<String> OTHERS = Set.of(
            "since",
            "cleared",
            "mil",
            "injection",
            "injector",
            "injektor",
            "open",
            "dwell",
            "ignition",
            "pulse",
            "lap",
            "fuel",
            "burn",
            "reaction",
            "to",
            "best",
            "sector",
            "split",
            "distance",
            "odometer",
            "index",
            "row",
            "count",
            "counter",
            "number",
            "nr",
            "no",
            "sample",
            "frame",
            "id",
            "zeile");

    private static final double EPOCH_S = 6e8;
    private static final double FEW = 0.8;
    private static final double[] UNITS_OF_EPOCH_S = {1, 1e-3, 1e-6, 1e-9};

    /** Steps of whole numbers from this on are taken for milliseconds: nobody logs an engine every ten seconds. */
    private static final double LONGEST_STEP_S = 10;

    /** What somebody chose, as a mapping keeps it. */
    public static TimeColumn chosen(int index, TimeWriting writing, String unit) {
        double s = Scaling.find(unit, Dimension.DURATION).map(Scaling::factor).orElse(1.0);
        return new TimeColumn(index, writing, writing == TimeWriting.NUMBER ? s : 1, unit, Why.CHOSEN);
    }

    /** When a cell of this column was logged, as {@link TimeWriting} reads it. */
    public double seconds(String cell, boolean commaGroups) {
        char[] text = cell.toCharArray();
        return writing.seconds(text, 0, text.length, secondsPerUnit, commaGroups);
    }

    /** The most likely one; empty when no column rises. */
    static Optional<TimeColumn> find(List<Heading> headings, List<List<String>> rows, boolean commaGroups) {
        TimeColumn best = null;
        double most = 0;
        for (int i = 0; i < headings.size(); i++) {
            Heading h = headings.get(i);
            List<String> cells = column(rows, i);
            TimeWriting writing = writing(cells, commaGroups);
            double[] t = values(cells, writing, commaGroups);
            double score = score(h, i, writing, t);
            if (score > most) {
                most = score;
                best = of(i, h, writing, t);
            }
        }
        return Optional.ofNullable(best);
    }

    private static List<String> column(List<List<String>> rows, int index) {
        List<String> cells = new ArrayList<>();
        for (List<String> row : rows) {
            if (index < row.size() && !row.get(index).isBlank()) {
                cells.add(row.get(index).strip());
            }
        }
        return cells;
    }

    private static TimeWriting writing(List<String> cells, boolean commaGroups) {
        long clocks = cells.stream()
                .filter(c -> TimeWriting.clock(c) != CellValue.BAD)
                .count();
        if (2 * clocks > cells.size()) {
            return TimeWriting.CLOCK;
        }
        long days = cells.stream()
                .filter(c -> TimeWriting.date(c, false) != CellValue.BAD)
                .count();
        long months = cells.stream()
                .filter(c -> TimeWriting.date(c, true) != CellValue.BAD)
                .count();
        boolean halves = cells.stream().anyMatch(c -> c.matches("\\d{1,2}/.*[aApP]\\.?[mM]\\.?"));
        if (2 * Math.max(days, months) > cells.size()) {
            return months > days || halves && months == days ? TimeWriting.DATE_MONTH_FIRST : TimeWriting.DATE;
        }
        return TimeWriting.NUMBER;
    }

    private static double[] values(List<String> cells, TimeWriting writing, boolean commaGroups) {
        return cells.stream()
                .mapToDouble(c -> writing.seconds(c.toCharArray(), 0, c.length(), 1, commaGroups))
                .filter(v -> v != CellValue.BAD && !Double.isNaN(v))
                .toArray();
    }

    private static double score(Heading h, int index, TimeWriting writing, double[] t) {
        int rises = 0;
        int falls = 0;
        for (int i = 1; i < t.length; i++) {
            rises += t[i] > t[i - 1] ? 1 : 0;
            falls += t[i] < t[i - 1] ? 1 : 0;
        }
        boolean named =
                NAMES.matcher(h.name()).matches() || NAMES.matcher(h.words()).matches() || near(h.name());
        boolean other = !named && Arrays.stream(h.words().split(" ")).anyMatch(OTHERS::contains);
        boolean ofDuration = Scaling.find(h.unit(), Dimension.DURATION).isPresent();
        boolean single = t.length == 1 && named;
        if (t.length == 0 || other || !single && (rises == 0 || rises < FEW * (rises + falls))) {
            return 0;
        }
        double score = named ? 4 : 0;
        score += writing == TimeWriting.NUMBER ? 0 : 3;
        score += ofDuration ? 1 : 0;
        score += falls == 0 ? 0.3 : 0;
        score += 0.5 / (1 + index);
        boolean bare = h.name().isEmpty() || h.name().matches("(column|ch|channel|kanal|spalte|x|v|c|k)? ?\\d*");
        return score >= 1 || bare && index == 0 && falls <= 2 ? score : 0;
    }

    /** One letter off from a time of the run. */
    private static boolean near(String name) {
        return List.of("engine run time", "timestamp", "time stamp", "elapsed time", "zeitstempel").stream()
                .anyMatch(n -> EditDistance.between(n, name) <= 1);
    }

    private static TimeColumn of(int index, Heading h, TimeWriting writing, double[] t) {
        if (writing != TimeWriting.NUMBER) {
            return new TimeColumn(index, writing, 1, "", Why.NAME_AND_UNIT);
        }
        boolean named =
                NAMES.matcher(h.name()).matches() || NAMES.matcher(h.words()).matches() || near(h.name());
        Optional<Scaling> written = Scaling.find(h.unit(), Dimension.DURATION);
        if (written.isPresent()) {
            return new TimeColumn(
                    index, writing, written.get().factor(), written.get().symbol(), Why.NAME_AND_UNIT);
        }
        double s = unit(t);
        String symbol = Scaling.of(Dimension.DURATION).stream()
                .filter(u -> u.factor() == s)
                .map(Scaling::symbol)
                .findFirst()
                .orElse("s");
        return new TimeColumn(index, writing, s, symbol, named ? Why.NAME : Why.RISES);
    }

    /** Seconds in a unit that is not written: by the size of an epoch, else by the steps. */
    private static double unit(double[] t) {
        for (double s : UNITS_OF_EPOCH_S) {
            if (t[0] * s >= EPOCH_S && t[0] * s < 10 * EPOCH_S) {
                return s;
            }
        }
        double[] steps = IntStream.range(1, t.length)
                .mapToDouble(i -> t[i] - t[i - 1])
                .filter(d -> d > 0)
                .sorted()
                .toArray();
        if (steps.length == 0) {
            return 1;
        }
        double step = steps[steps.length / 2];
        boolean whole = Arrays.stream(t).allMatch(v -> v == Math.rint(v));
        if (whole && step >= 10_000) {
            return 1e-6;
        }
        return whole && step >= LONGEST_STEP_S ? 1e-3 : 1;
    }
}

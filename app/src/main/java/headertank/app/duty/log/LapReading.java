package headertank.app.duty.log;

import headertank.app.duty.DutyFault;
import headertank.app.duty.DutyText;
import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogSource;
import headertank.app.log.read.LogMapping;
import headertank.app.log.read.LogMapping.Chosen;
import headertank.app.log.read.LogQuantity;
import headertank.app.log.read.LogReader;
import headertank.app.log.read.LogSummary;
import headertank.app.log.read.LogSummary.Stretch;
import headertank.app.log.view.MappingForm;
import headertank.calc.duty.LoggedLap;
import headertank.calc.duty.LoggedLap.Sample;
import headertank.calc.quantity.Range;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The samples of a lap in a log: its longest stretch, each reading held until there is a new one. */
final class LapReading {

    /** A sensor of throttle or load strays a little beyond its ends; this much is taken for the end [-]. */
    private static final double STRAY = 0.1;

    /** More rows than this share that make no sense, and the column is not what it was taken for [-]; modelling choice. */
    private static final double MOST_ODD = 0.01;

    private static final Range SPEED_M_PER_S = Range.of(0, 90);
    private static final double MOST_SHARE = 1.2;

    private final DutyText words;
    private final List<DutyFault> faults = new ArrayList<>();
    private final List<Sample> samples = new ArrayList<>();
    private long leftOut;

    LapReading(DutyText words) {
        this.words = words;
    }

    List<DutyFault> faults() {
        return faults;
    }

    /** Empty when there are faults. */
    List<Sample> samples() {
        return faults.isEmpty() ? samples : List.of();
    }

    /** Rows that make no sample: broken, or out of what a car does. */
    long leftOut() {
        return leftOut;
    }

    /**
     * @param summary of the log, with the column of time that was chosen
     * @param ratedRadPerS engine speed of rated power [rad/s]
     */
    void read(LogSource log, LogSummary summary, MappingForm said, LogForm.Meaning meaning, double ratedRadPerS)
            throws IOException {
        Optional<LogMapping> mapping = said.mapping(summary);
        Optional<Chosen> speed = mapping.flatMap(m -> m.of(LogQuantity.ROAD_SPEED));
        Optional<Chosen> engine = mapping.flatMap(m -> m.of(LogQuantity.ENGINE_SPEED));
        Optional<Chosen> load = meaning.columns.stream()
                .flatMap(q -> mapping.flatMap(m -> m.of(q)).stream())
                .findFirst();
        missing(summary, mapping.isPresent(), "TIME");
        missing(summary, speed.isPresent(), "SPEED");
        missing(summary, engine.isPresent(), "ENGINE");
        missing(summary, load.isPresent(), "LOAD");
        if (!faults.isEmpty()) {
            return;
        }
        List<Chosen> columns = List.of(speed.orElseThrow(), engine.orElseThrow(), load.orElseThrow());
        List<Range> allowed =
                List.of(SPEED_M_PER_S, Range.of(0, MOST_SHARE * ratedRadPerS), Range.of(-STRAY, 1 + STRAY));
        Lap lap = new Lap(longest(summary.stretches()), columns, allowed, meaning, ratedRadPerS);
        LogReader.Tally tally =
                LogReader.read(log, new LogMapping(mapping.orElseThrow().time(), columns), LogLimits.USUAL, lap::take);
        leftOut = tally.badRows() + Arrays.stream(lap.odd).sum();
        for (int i = 0; i < columns.size(); i++) {
            if (lap.odd[i] > MOST_ODD * tally.rows()) {
                outOfRange(summary, columns.get(i), lap.firstOdd[i], allowed.get(i));
            }
        }
        if (faults.isEmpty() && (samples.size() < LoggedLap.FEWEST || samples.size() > LoggedLap.MOST)) {
            faults.add(new DutyFault(
                    0,
                    words.say("duties.log.lines"),
                    String.valueOf(samples.size()),
                    words.say("duties.log.range", LoggedLap.FEWEST, LoggedLap.MOST, "")));
        }
    }

    private void missing(LogSummary summary, boolean found, String what) {
        if (!found) {
            String headings = summary.head().headings().stream()
                    .limit(30)
                    .map(h -> h.text())
                    .collect(Collectors.joining(", "));
            faults.add(
                    new DutyFault(0, words.say("duties.log." + what), "", words.say("duties.log.headings", headings)));
        }
    }

    private void outOfRange(LogSummary summary, Chosen column, double si, Range allowed) {
        faults.add(new DutyFault(
                0,
                summary.head().headings().get(column.column()).text(),
                String.format(Locale.ROOT, "%.6g", column.unit().fromSi(si)),
                words.say(
                        "duties.log.range",
                        Math.rint(column.unit().fromSi(allowed.min())),
                        Math.rint(column.unit().fromSi(allowed.max())),
                        column.unit().symbol())));
    }

    private static int longest(List<Stretch> stretches) {
        int longest = 0;
        for (int i = 1; i < stretches.size(); i++) {
            if (stretches.get(i).lengthS() > stretches.get(longest).lengthS()) {
                longest = i;
            }
        }
        return longest;
    }

    /** Holds the last readings of one stretch. */
    private final class Lap {

        private final int stretch;
        private final List<Chosen> columns;
        private final List<Range> allowed;
        private final LogForm.Meaning meaning;
        private final double ratedRadPerS;
        private final double[] last = {Double.NaN, Double.NaN, Double.NaN};
        private final long[] odd = new long[3];
        private final double[] firstOdd = new double[3];

        Lap(int stretch, List<Chosen> columns, List<Range> allowed, LogForm.Meaning meaning, double ratedRadPerS) {
            this.stretch = stretch;
            this.columns = columns;
            this.allowed = allowed;
            this.meaning = meaning;
            this.ratedRadPerS = ratedRadPerS;
        }

        void take(int number, double timeS, double[] si) {
            if (number != stretch) {
                return;
            }
            for (int i = 0; i < last.length; i++) {
                double v = si[columns.get(i).quantity().ordinal()];
                if (allowed.get(i).contains(v)) {
                    last[i] = v;
                } else if (!Double.isNaN(v)) {
                    firstOdd[i] = odd[i] == 0 ? v : firstOdd[i];
                    odd[i]++;
                }
            }
            if (!Double.isNaN(last[0] + last[1] + last[2]) && samples.size() <= LoggedLap.MOST) {
                double share = last[1] / ratedRadPerS;
                double full = Math.max(0, Math.min(1, last[2]));
                double power = meaning == LogForm.Meaning.POWER ? full : Math.min(1, full * share);
                samples.add(new Sample(timeS, last[0], share, power));
            }
        }
    }
}

package headertank.app.log.read;

import headertank.app.log.file.LogHead;
import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogSource;
import headertank.app.log.file.TimeColumn;
import headertank.app.log.read.BadRow.Fault;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Reads logs of loggers and engine controllers as separated text. {@link #survey} tells what is there and what it seems to be;
 * {@link #read} hands on the readings that a mapping names, in SI units. Both walk through the file once, in constant memory.
 */
public final class LogReader {

    private LogReader() {}

    /**
     * @param rows moments that were handed on
     * @param badRows rows that were left out or lost a reading
     * @param shownBad the first of them
     */
    public record Tally(long rows, long badRows, List<BadRow> shownBad) {
        public Tally {
            shownBad = List.copyOf(shownBad);
        }
    }

    /** @throws headertank.app.log.file.LogRefused when the file is no log or larger than allowed */
    public static LogSummary survey(LogSource source, LogLimits limits) throws IOException {
        return survey(source, LogHead.of(source, limits), limits);
    }

    /**
     * The same with a column of time that somebody chose.
     *
     * @throws headertank.app.log.file.LogRefused when the file is no log or larger than allowed
     */
    public static LogSummary survey(LogSource source, TimeColumn time, LogLimits limits) throws IOException {
        return survey(source, LogHead.of(source, limits).with(time), limits);
    }

    private static LogSummary survey(LogSource source, LogHead head, LogLimits limits) throws IOException {
        int time = head.time().map(TimeColumn::index).orElse(-1);
        int[] columns = IntStream.range(0, head.headings().size())
                .filter(i -> i != time && !head.isText(i))
                .toArray();
        Survey survey = new Survey(columns);
        LogPass pass = new LogPass(head, limits, columns, survey);
        pass.run(source);
        return survey.summary(head, pass);
    }

    /**
     * Hands on readings; those of one moment together, the later of two in one row of time.
     *
     * @throws headertank.app.log.file.LogRefused when the file is no log or larger than allowed
     */
    public static Tally read(LogSource source, LogMapping mapping, LogLimits limits, RowSink sink) throws IOException {
        LogHead head = LogHead.of(source, limits).with(mapping.time());
        int[] columns =
                mapping.columns().stream().mapToInt(LogMapping.Chosen::column).toArray();
        Readings readings = new Readings(mapping, head, sink);
        new LogPass(head, limits, columns, readings).run(source);
        readings.flush();
        return new Tally(readings.rows, readings.badRows, readings.shown);
    }

    /** Counts everything. */
    private static final class Survey implements LogPass.Visitor {

        private final List<ColumnTally> tallies;
        private final double[] before;
        private final List<BadRow> shown = new ArrayList<>();
        private long badRows;
        private long severalBad;
        private long rows;
        private long repeated;

        Survey(int[] columns) {
            tallies = Arrays.stream(columns).mapToObj(ColumnTally::new).toList();
            before = new double[columns.length];
        }

        @Override
        public void row(long line, int stretch, double timeS, double[] values, boolean begins, boolean same) {
            rows++;
            if (same && Arrays.equals(values, before)) {
                repeated++;
                return;
            }
            System.arraycopy(values, 0, before, 0, values.length);
            for (int i = 0; i < values.length; i++) {
                if (!Double.isNaN(values[i])) {
                    tallies.get(i).take(timeS, values[i], begins);
                } else if (begins) {
                    tallies.get(i).beginAnew();
                }
            }
        }

        @Override
        public void bad(BadRow row) {
            badRows++;
            if (shown.size() < BadRow.SHOWN) {
                shown.add(row);
            }
        }

        @Override
        public void badCell(int which, BadRow cell, boolean only) {
            tallies.get(which).bad(cell, only);
            severalBad += only ? 1 : 0;
        }

        LogSummary summary(LogHead head, LogPass pass) {
            long ofText = 0;
            List<BadRow> all = new ArrayList<>(shown);
            for (ColumnTally t : tallies) {
                if (t.isText()) {
                    ofText += t.onlyBad();
                } else {
                    all.addAll(t.badRows());
                }
            }
            TimeLine line = pass.timeLine();
            Set<Long> lines = new HashSet<>();
            all.sort(Comparator.comparingLong(BadRow::line));
            all.removeIf(b -> !lines.add(b.line()));
            List<ColumnSummary> columns = new ArrayList<>();
            for (int i = 0; i < head.headings().size(); i++) {
                columns.add(column(head, i, line.lengthS()));
            }
            return new LogSummary(
                    head,
                    columns,
                    ColumnGuesser.guesses(head, tallies),
                    rows,
                    badRows + severalBad - ofText,
                    all.subList(0, Math.min(BadRow.SHOWN, all.size())),
                    repeated,
                    pass.comments(),
                    line.stretches(),
                    line.stretch() + 1,
                    line.gaps(),
                    line.longestGapS(),
                    line.lengthS());
        }

        private ColumnSummary column(LogHead head, int index, double spanS) {
            ColumnTally tally = tallies.stream()
                    .filter(t -> t.column() == index)
                    .findFirst()
                    .orElseGet(() -> new ColumnTally(index));
            String unit = head.headings().get(index).unit();
            return tally.summary(head.headings().get(index).text(), unit, spanS, head.isText(index));
        }
    }

    /** Turns numbers into SI and joins those of one moment. */
    private static final class Readings implements LogPass.Visitor {

        private final LogMapping mapping;
        private final LogHead head;
        private final RowSink sink;
        private final double[] si = new double[LogQuantity.values().length];
        private final List<BadRow> shown = new ArrayList<>();
        private int stretch = -1;
        private double timeS;
        private long rows;
        private long badRows;

        Readings(LogMapping mapping, LogHead head, RowSink sink) {
            this.mapping = mapping;
            this.head = head;
            this.sink = sink;
        }

        @Override
        public void row(long line, int number, double seconds, double[] values, boolean begins, boolean same) {
            if (!same || begins) {
                flush();
                Arrays.fill(si, Double.NaN);
                stretch = number;
                timeS = seconds;
            }
            for (int i = 0; i < values.length; i++) {
                if (!Double.isNaN(values[i])) {
                    LogMapping.Chosen c = mapping.columns().get(i);
                    double v = c.unit().toSi(values[i]);
                    if (c.quantity().possible().contains(v)) {
                        si[c.quantity().ordinal()] = v;
                    } else {
                        bad(outOfRange(line, c, values[i]));
                    }
                }
            }
        }

        private BadRow outOfRange(long line, LogMapping.Chosen c, double value) {
            String heading = head.headings().get(c.column()).text();
            return new BadRow(line, heading, value + " " + c.unit().symbol(), Fault.OUT_OF_RANGE);
        }

        void flush() {
            if (stretch >= 0) {
                sink.row(stretch, timeS, si);
                rows++;
            }
        }

        @Override
        public void bad(BadRow row) {
            badRows++;
            if (shown.size() < BadRow.SHOWN) {
                shown.add(row);
            }
        }

        @Override
        public void badCell(int which, BadRow cell, boolean only) {
            badRows += only ? 1 : 0;
            if (shown.size() < BadRow.SHOWN) {
                shown.add(cell);
            }
        }
    }
}

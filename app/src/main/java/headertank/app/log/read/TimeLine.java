package headertank.app.log.read;

import headertank.app.log.file.LogHead;
import headertank.app.log.file.TimeColumn;
import headertank.app.log.file.TimeWriting;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Puts rows on a line of time: stretches, gaps, rows of the same moment. */
final class TimeLine {

    /** Time that passes without a row for this long is a gap, if it is also several usual steps [s]; modelling choice. */
    static final double GAP_S = 5;

    private static final double GAP_STEPS = 2.5;

    /** A gap this long begins a new stretch: the car has cooled down meanwhile [s]; modelling choice. */
    static final double NEW_RUN_S = 3600;

    /** Time may step back by this much without a restart: rows out of order [s]; modelling choice. */
    static final double BACK_S = 1;

    private static final double HALF_DAY_S = 43_200;
    private static final int KEPT_STRETCHES = 100;

    private final boolean clock;
    private final double gapS;
    private final List<LogSummary.Stretch> stretches = new ArrayList<>();
    private double last = Double.NaN;
    private double base;
    private double days;
    private int stretch = -1;
    private long stretchLine;
    private long stretchRows;
    private long gaps;
    private double longestGapS;
    private double endedS;

    TimeLine(LogHead head) {
        clock = head.time().filter(t -> t.writing() == TimeWriting.CLOCK).isPresent();
        gapS = Math.max(GAP_S, GAP_STEPS * head.time().map(t -> step(head, t)).orElse(0.0));
    }

    private static double step(LogHead head, TimeColumn time) {
        double[] t = head.rows().stream()
                .mapToDouble(r -> seconds(r, head, time))
                .filter(Double::isFinite)
                .toArray();
        double[] steps = new double[Math.max(0, t.length - 1)];
        int n = 0;
        for (int i = 1; i < t.length; i++) {
            if (t[i] > t[i - 1]) {
                steps[n++] = t[i] - t[i - 1];
            }
        }
        Arrays.sort(steps, 0, n);
        return n == 0 ? 0 : steps[n / 2];
    }

    private static double seconds(List<String> row, LogHead head, TimeColumn time) {
        if (time.index() >= row.size()) {
            return Double.NaN;
        }
        return time.seconds(row.get(time.index()), head.commaGroups());
    }

    /** The time of a row on the way on: a clock that passes midnight goes on. */
    double unfolded(double t) {
        if (clock && !Double.isNaN(last) && t + days < last - HALF_DAY_S) {
            days += 2 * HALF_DAY_S;
        }
        return t + days;
    }

    /** Whether a row at this time is to be believed only when the next one goes on from it. */
    boolean isSuspect(double t) {
        return t - last > gapS || t - last < -BACK_S;
    }

    /** Whether it lies before the row above, but not so far as to be a restart. */
    boolean isOutOfOrder(double t) {
        return t < last;
    }

    /** Whether it follows the row above as if nothing had been in between. */
    boolean isNext(double t) {
        return t >= last && t - last <= gapS;
    }

    boolean isSame(double t) {
        return t == last;
    }

    /**
     * Takes a row.
     *
     * @return whether it begins a stretch
     */
    boolean take(long line, double t) {
        double step = t - last;
        boolean begins = stretch < 0 || step < 0 || step > NEW_RUN_S;
        if (begins) {
            end();
            stretch++;
            base = t;
            stretchLine = line;
            stretchRows = 0;
        } else if (step > gapS) {
            gaps++;
            longestGapS = Math.max(longestGapS, step);
        }
        stretchRows++;
        last = t;
        return begins;
    }

    /** Ends the stretch under way. */
    void end() {
        if (stretch >= 0 && stretchRows > 0) {
            double length = last - base;
            endedS += length;
            if (stretches.size() < KEPT_STRETCHES) {
                stretches.add(new LogSummary.Stretch(stretchLine, stretchRows, length));
            }
            stretchRows = 0;
        }
    }

    int stretch() {
        return stretch;
    }

    double sinceBegin() {
        return last - base;
    }

    List<LogSummary.Stretch> stretches() {
        return stretches;
    }

    long gaps() {
        return gaps;
    }

    double longestGapS() {
        return longestGapS;
    }

    double lengthS() {
        return endedS;
    }
}

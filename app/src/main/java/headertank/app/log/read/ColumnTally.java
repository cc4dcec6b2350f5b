package headertank.app.log.read;

import headertank.app.log.file.CellValue;
import java.util.ArrayList;
import java.util.List;

/** Counts what one column holds, in constant memory. */
final class ColumnTally {

    private static final int BUCKETS = 96;
    private static final int ZERO_BUCKET = 48;
    private static final double MOST = 0.99;

    private final int column;
    private long readings;
    private long bad;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;
    private double last = Double.NaN;
    private double lastAt = Double.NaN;
    private double stillSince = Double.NaN;
    private double longestStillS;
    private long changes;
    private boolean whole = true;
    private final long[] slopes = new long[BUCKETS];
    private long slopeCount;
    private final List<BadRow> badRows = new ArrayList<>();
    private long onlyBad;

    ColumnTally(int column) {
        this.column = column;
    }

    /** @param timeS since the beginning of the stretch, NaN when there is no time */
    void take(double timeS, double value, boolean newStretch) {
        readings++;
        least = Math.min(least, value);
        greatest = Math.max(greatest, value);
        whole &= value == Math.rint(value);
        if (newStretch) {
            beginAnew();
        }
        if (Double.isNaN(last)) {
            stillSince = timeS;
        } else {
            if (timeS > lastAt) {
                slope(Math.abs(value - last) / (timeS - lastAt));
            }
            if (value != last) {
                changes++;
                stillSince = timeS;
            } else if (timeS - stillSince > longestStillS) {
                longestStillS = timeS - stillSince;
            }
        }
        last = value;
        lastAt = timeS;
    }

    /** A stretch begins without a reading. */
    void beginAnew() {
        last = Double.NaN;
        lastAt = Double.NaN;
    }

    private void slope(double perS) {
        slopes[Math.max(0, Math.min(BUCKETS - 1, Math.getExponent(perS) + ZERO_BUCKET))]++;
        slopeCount++;
    }

    void bad(BadRow row, boolean only) {
        bad++;
        onlyBad += only ? 1 : 0;
        if (badRows.size() < BadRow.SHOWN) {
            badRows.add(row);
        }
    }

    int column() {
        return column;
    }

    long readings() {
        return readings;
    }

    /** Whether it holds words rather than numbers. */
    boolean isText() {
        return bad > readings;
    }

    long onlyBad() {
        return onlyBad;
    }

    List<BadRow> badRows() {
        return badRows;
    }

    /** What 99 of 100 changes between readings do not exceed [1/s], to a factor of two. */
    double usualSlope() {
        long below = 0;
        for (int i = 0; i < BUCKETS; i++) {
            below += slopes[i];
            if (below >= MOST * slopeCount) {
                return i == 0 ? 0 : Math.scalb(1.0, i - ZERO_BUCKET);
            }
        }
        return 0;
    }

    double least() {
        return least;
    }

    double greatest() {
        return greatest;
    }

    boolean stands() {
        return readings > 1 && changes == 0;
    }

    boolean isWhole() {
        return whole;
    }

    ColumnSummary summary(String heading, String unit, double spanS, boolean words) {
        boolean none = readings == 0;
        return new ColumnSummary(
                column,
                heading,
                unit,
                readings,
                bad,
                changes,
                none ? CellValue.NONE : least,
                none ? CellValue.NONE : greatest,
                spanS > 0 ? readings / spanS : CellValue.NONE,
                longestStillS,
                words || isText());
    }
}

package headertank.app.log.read;

/**
 * What a column holds, as written.
 *
 * @param index from 0
 * @param unit as written, empty when it stands nowhere
 * @param readings cells with a number
 * @param bad cells that are neither a number nor empty
 * @param changes how often a reading differs from the one before
 * @param least smallest number; NaN without readings, likewise the greatest
 * @param perS readings a second; NaN without time
 * @param longestStillS how long it stood still at most [s]
 * @param text whether it holds words
 */
public record ColumnSummary(
        int index,
        String heading,
        String unit,
        long readings,
        long bad,
        long changes,
        double least,
        double greatest,
        double perS,
        double longestStillS,
        boolean text) {

    /** Whether it has readings and they never change. */
    public boolean stands() {
        return readings > 1 && changes == 0;
    }
}

package headertank.app.log.read;

/** Takes the rows of a log, one for each moment, in their order. */
@FunctionalInterface
public interface RowSink {

    /**
     * @param stretch number of the stretch from 0; a new one begins where time jumps back or an hour or more is missing
     * @param timeS since the beginning of the stretch, rising [s]
     * @param si readings by {@link LogQuantity#ordinal()} [SI]; NaN where there is no new one. The array is used again.
     */
    void row(int stretch, double timeS, double[] si);
}

package headertank.app.log.read;

/**
 * A row, or a cell of it, that was left out.
 *
 * @param line number of its line, from 1
 * @param column heading; empty when it is about the whole row
 * @param value as written, brief
 */
public record BadRow(long line, String column, String value, Fault fault) {

    /** How many are shown; the others are only counted. */
    public static final int SHOWN = 20;

    private static final int LONGEST = 60;

    /** What is wrong. */
    public enum Fault {
        /** More or fewer cells than there are columns, or a quote that does not end. */
        CELLS,
        /** The time is none. */
        TIME,
        /** The time lies before that of the row above, or far off. */
        ORDER,
        /** Neither a number nor empty. */
        NOT_A_NUMBER,
        /** Outside of what such a reading can be. */
        OUT_OF_RANGE
    }

    public BadRow {
        value = value.length() <= LONGEST ? value : value.substring(0, LONGEST - 1) + "…";
    }
}

package headertank.app.log.read;

import headertank.app.unit.Scaling;
import java.util.List;

/**
 * What a column seems to be.
 *
 * @param column index from 0
 * @param unit what its numbers are taken in
 * @param sureness 0 to 1: a score to order guesses by, no probability
 * @param reasons what it rests on
 */
public record ColumnGuess(LogQuantity quantity, int column, Scaling unit, double sureness, List<Reason> reasons) {

    public ColumnGuess {
        reasons = List.copyOf(reasons);
    }

    /** How sure, in three steps. */
    public enum Sureness {
        SURE,
        LIKELY,
        GUESS
    }

    /** Why a column is taken for something. */
    public enum Why {
        /** The heading is a usual name. */
        NAME_SAME,
        /** A usual name is part of the heading. */
        NAME_PART,
        /** A usual name, one or two letters off. */
        NAME_NEAR,
        /** No name: the unit and the values fit. */
        NO_NAME,
        /** The unit stands in the heading. */
        UNIT_HEADING,
        /** In a line of its own. */
        UNIT_ROW,
        /** Behind the numbers. */
        UNIT_CELL,
        /** Nowhere: only with this unit are the values usual ones. */
        UNIT_VALUES,
        /** Nowhere: other units would do as well. */
        UNIT_ASSUMED,
        /** Some readings are none that a car gives. */
        RANGE_ODD,
        /** It changes faster than such a reading does. */
        RATE_ODD,
        /** The value never changes. */
        STANDS
    }

    /** @param what name or unit that it is about, may be empty */
    public record Reason(Why why, String what) {}

    public Sureness level() {
        return sureness >= 0.75 ? Sureness.SURE : sureness >= 0.5 ? Sureness.LIKELY : Sureness.GUESS;
    }
}

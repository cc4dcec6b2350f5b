package headertank.calc.quantity;

/**
 * A remark that a model leaves on a result when it was asked for something beyond its source's range.
 *
 * @param field which quantity, by the name of the model's parameter, e.g. {@code glycolMassFraction}
 * @param value the value that was asked for, SI
 * @param covered the range that the source covers, SI
 * @param action what the model did about it
 * @param widening factor on the model's standard deviation, at least 1 [-]
 * @param why what to tell the reader of the result
 */
public record Note(String field, double value, Range covered, Action action, double widening, Message why) {

    /** What a model did with a value outside its source's range. */
    public enum Action {
        /** Computed at the nearest bound. */
        CLAMPED,
        /** Computed as asked, by a documented extension, with a wider uncertainty. */
        WIDENED
    }

    public Note {
        if (!(widening >= 1)) {
            throw new IllegalArgumentException("widening must be at least 1, is " + widening);
        }
    }
}

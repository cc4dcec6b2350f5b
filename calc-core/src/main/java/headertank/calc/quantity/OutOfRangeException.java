package headertank.calc.quantity;

/** A model was asked for something that its source does not cover and that it refuses to extend. */
public final class OutOfRangeException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String field;
    private final double value;
    private final double min;
    private final double max;

    /**
     * @param field name of the model's parameter
     * @param value the value that was asked for, SI
     * @param allowed the range that the model accepts, SI
     */
    public OutOfRangeException(String field, double value, Range allowed) {
        super(field + " = " + value + " lies outside " + allowed.min() + " to " + allowed.max());
        this.field = field;
        this.value = value;
        this.min = allowed.min();
        this.max = allowed.max();
    }

    /**
     * Passes the value through when the range contains it.
     *
     * @throws OutOfRangeException when it does not, or is not a number
     */
    public static double require(String field, double value, Range allowed) {
        if (!allowed.contains(value)) {
            throw new OutOfRangeException(field, value, allowed);
        }
        return value;
    }

    /** The same for a range that is not kept: makes no object unless the value lies outside. */
    public static double require(String field, double value, double min, double max) {
        if (!(value >= min && value <= max)) {
            throw new OutOfRangeException(field, value, Range.of(min, max));
        }
        return value;
    }

    public String field() {
        return field;
    }

    public double value() {
        return value;
    }

    public Range allowed() {
        return new Range(min, max);
    }
}

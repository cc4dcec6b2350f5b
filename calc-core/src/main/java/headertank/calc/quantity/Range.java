package headertank.calc.quantity;

/**
 * A closed range of allowed or covered values.
 *
 * @param min smallest value, in the SI unit of the quantity
 * @param max largest value, in the SI unit of the quantity
 */
public record Range(double min, double max) {

    public Range {
        if (!(min <= max)) {
            throw new IllegalArgumentException("an empty range: " + min + " to " + max);
        }
    }

    public static Range of(double min, double max) {
        return new Range(min, max);
    }

    /** @return whether the value lies inside; never for NaN */
    public boolean contains(double value) {
        return value >= min && value <= max;
    }

    /** @return the nearest value inside the range */
    public double clamp(double value) {
        return Math.max(min, Math.min(max, value));
    }
}

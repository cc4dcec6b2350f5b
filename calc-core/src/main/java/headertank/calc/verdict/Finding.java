package headertank.calc.verdict;

/**
 * One thing that a verdict rests on.
 *
 * @param code stable name, for translation and tests
 * @param verdict the best verdict that this finding allows
 * @param value the figure it rests on, in the unit named
 * @param unit unit of {@code value}
 * @param text one plain English sentence with the figure
 * @param doThis what to do about it, empty when nothing
 */
public record Finding(Code code, Verdict verdict, double value, String unit, String text, String doThis) {

    /** The kinds of finding. */
    public enum Code {
        COOLANT_MARGIN,
        COOLANT_PROBABILITY,
        OIL_MARGIN,
        BOILING_MARGIN,
        NO_STEADY_STATE,
        OUTSIDE_SOURCE_RANGE,
        ALTERNATOR,
        PUMP_INLET,
        RISK_FLAG
    }
}

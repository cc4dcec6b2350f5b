package headertank.calc.quantity;

/**
 * One fault of an input, for whoever has to mend it.
 *
 * @param field key of the field, e.g. {@code radiator.coreWidthM}
 * @param value the refused value as text, empty when the value is missing
 * @param allowed what would be accepted, as text with its unit
 * @param code what kind of fault
 */
public record InputProblem(String field, String value, String allowed, Code code) {

    /** The kinds of fault. */
    public enum Code {
        /** A number outside the allowed range. */
        OUT_OF_RANGE,
        /** Not a number or not a known word. */
        NOT_UNDERSTOOD,
        /** Needed and not there. */
        MISSING,
        /** Two fields that cannot both be right. */
        CONTRADICTION
    }

    /** @return one line that names the field, the value and what is allowed */
    public String message() {
        return field + " = " + (value.isEmpty() ? "(nothing)" : value) + ": allowed is " + allowed;
    }
}

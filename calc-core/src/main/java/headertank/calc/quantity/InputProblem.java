package headertank.calc.quantity;

/**
 * One fault of an input, for whoever has to mend it.
 *
 * @param line of the text, or sample of the log, that holds it, from 1; 0 where there are no lines
 * @param field key of the field, name of the column or parameter, e.g. {@code radiator.coreWidthM}
 * @param value what was refused; {@link Message#NONE} when it is missing
 * @param allowed what would be accepted; for a contradiction a sentence on what does not go together
 * @param code what kind of fault
 */
public record InputProblem(int line, String field, MessageArgument value, Message allowed, Code code) {

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

    /** @return a fault of something that has no lines */
    public static InputProblem of(String field, MessageArgument value, Message allowed, Code code) {
        return new InputProblem(0, field, value, allowed, code);
    }

    /** @return place, value and code of what is allowed, for logs */
    @Override
    public String toString() {
        return (line > 0 ? "line " + line + ", " : "") + field + " = "
                + (value.equals(Message.NONE) ? "(nothing)" : value) + ": " + allowed;
    }
}

package headertank.calc.duty;

import headertank.calc.quantity.MessageCode;

/**
 * What a duty's text and a log accept. Numbers, names and words of a file stand in the arguments as the file has them, in the
 * unit that its column names.
 */
public enum DutyInputText implements MessageCode {
    /** From, to. */
    RANGE(2),
    /** Above, to. */
    ABOVE_TO(2),
    ABOVE(1),
    /** Quotes end where their cell ends. */
    QUOTES(0),
    AT_MOST_LINES(1),
    A_HEADER(0),
    LINE_BELOW_HEADER(0),
    /** Names of the columns. */
    COLUMNS(1),
    EACH_COLUMN_ONCE(0),
    A_COLUMN(1),
    /** How many cells there are. */
    CELLS(1),
    AT_MOST_CELLS(1),
    /** Longest name. */
    A_NAME(1),
    TEXT(0),
    /** Words, parted by commas. */
    ONE_OF(1),
    ENGINE_ON_SOMEWHERE(0),
    STEADY_WITHOUT_DURATIONS(0),
    MODES(0),
    SHARES_OF_A_MODE(0),
    TIME_SHARE_SUM(0),
    /** The point that was described before. */
    SAME_AS_BEFORE(1),
    /** A length of all phases together. */
    IN_ALL(1),
    AT_MOST_IN_ALL(1),
    AN_ENGINE_THAT_RUNS(0);

    private final int arguments;

    DutyInputText(int arguments) {
        this.arguments = arguments;
    }

    @Override
    public String code() {
        return MessageCode.of("duty-input", this);
    }

    @Override
    public int arguments() {
        return arguments;
    }
}

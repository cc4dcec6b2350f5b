package headertank.calc.quantity;

/** What can stand in the sentence of a {@link Message}; another message can, too. */
public sealed interface MessageArgument
        permits SiFigure,
                Message,
                MessageArgument.FieldName,
                MessageArgument.OptionName,
                MessageArgument.DutyName,
                MessageArgument.PointName,
                MessageArgument.Text {

    /**
     * Name of a field of the car.
     *
     * @param field its key
     */
    record FieldName(String field) implements MessageArgument {}

    /**
     * Name of an option of a field that is a choice.
     *
     * @param field key of the field
     * @param token the option
     */
    record OptionName(String field, String token) implements MessageArgument {}

    /**
     * Name of a duty.
     *
     * @param duty its id
     * @param label what its author calls it, for readers whose language has no word of its own
     */
    record DutyName(String duty, String label) implements MessageArgument {}

    /**
     * Name of an operating point.
     *
     * @param duty id of the duty that it belongs to
     * @param point its id
     * @param label what its author calls it, for readers whose language has no word of its own
     */
    record PointName(String duty, String point, String label) implements MessageArgument {}

    /**
     * A text that is shown as it is, such as a word of a file or a name that somebody gave.
     *
     * @param text the text
     */
    record Text(String text) implements MessageArgument {}
}

package headertank.calc.quantity;

import java.util.Locale;

/** What can stand in the sentence of a {@link Message}; another message can, too. */
public sealed interface MessageArgument
        permits SiFigure,
                Message,
                MessageArgument.FieldName,
                MessageArgument.FieldValue,
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
     * A number of a field of the car, shown as that field is, whatever its size.
     *
     * @param field key of the field
     * @param si the number in the field's SI unit
     */
    record FieldValue(String field, double si) implements MessageArgument {
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.6g", si);
        }
    }

    /**
     * Name of an option of a field that is a choice.
     *
     * @param field key of the field
     * @param token the option
     */
    record OptionName(String field, String token) implements MessageArgument {
        @Override
        public String toString() {
            return token;
        }
    }

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
    record Text(String text) implements MessageArgument {
        @Override
        public String toString() {
            return text;
        }
    }
}

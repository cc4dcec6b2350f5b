package headertank.calc.quantity;

import java.util.Locale;

/** The codes of messages of one package: an enumeration that says how many arguments each takes. */
public interface MessageCode {

    /** @return stable name, the same in every version */
    String code();

    /** @return how many arguments the sentence has places for */
    int arguments();

    /**
     * @return the message with what belongs into its sentence
     * @throws IllegalArgumentException when there are more or fewer arguments than places
     */
    default Message with(MessageArgument... arguments) {
        if (arguments.length != arguments()) {
            throw new IllegalArgumentException(
                    code() + " takes " + arguments() + " arguments, not " + arguments.length);
        }
        return Message.of(code(), arguments);
    }

    /** @return a code made of the name of an enumeration's constant: {@code OIL_ABOVE} is {@code prefix.oil-above} */
    static String of(String prefix, Enum<?> constant) {
        return prefix + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

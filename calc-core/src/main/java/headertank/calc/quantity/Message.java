package headertank.calc.quantity;

import java.util.List;

/**
 * What a model, a rule or a policy says: a code, and what belongs into its sentence. calc-core makes no sentences; whoever shows
 * a message looks up its code and puts the arguments in, in the reader's language and units.
 *
 * @param code stable name of the sentence, e.g. {@code verdict.oil-above-limit}; {@link #PLAIN} for a text that is shown as it is;
 *     empty when nothing is said
 * @param arguments what stands in the sentence, in the order of its places
 */
public record Message(String code, List<MessageArgument> arguments) implements MessageArgument {

    /** Code of a text that is shown as it is; its one argument is a {@link MessageArgument.Text}. */
    public static final String PLAIN = "plain";

    /** Nothing is said. */
    public static final Message NONE = new Message("", List.of());

    public Message {
        arguments = List.copyOf(arguments);
    }

    /** @return a message whose sentence a plug-in brings under this code, see docs/embedding.md */
    public static Message of(String code, MessageArgument... arguments) {
        return new Message(code, List.of(arguments));
    }

    /** @return a text of a plug-in, which is shown as it is in every language */
    public static Message plain(String text) {
        return text.isEmpty() ? NONE : new Message(PLAIN, List.of(new MessageArgument.Text(text)));
    }

    /** @return whether nothing is said */
    public boolean isEmpty() {
        return code.isEmpty();
    }

    /** @return code and arguments, for logs */
    @Override
    public String toString() {
        return code.equals(PLAIN)
                ? ((MessageArgument.Text) arguments.get(0)).text()
                : arguments.isEmpty() ? code : code + arguments;
    }
}

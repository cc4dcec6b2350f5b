package headertank.app.language;

import headertank.app.unit.UnitSystem;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.SiFigure;
import java.util.Locale;
import java.util.function.Supplier;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/**
 * What calc-core and its plug-ins say, in the language and units of the reader. The sentence of a {@link Message} stands under
 * {@code model.} and its code in one of the files {@code messages/*.properties} of the service or of a plug-in's jar.
 */
@Component("modelWords")
public final class ModelWords {

    static final String PREFIX = "model.";

    private final MessageSource messages;
    private final Supplier<UnitSystem> units;

    public ModelWords(MessageSource messages, Supplier<UnitSystem> units) {
        this.messages = messages;
        this.units = units;
    }

    /** @return the sentence for whoever asks; empty when nothing is said */
    public String of(Message message) {
        return of(message, units.get(), LocaleContextHolder.getLocale());
    }

    /** @return the sentence in a language and units given */
    public String of(Message message, UnitSystem system, Locale locale) {
        if (message.isEmpty()) {
            return "";
        }
        Object[] words =
                message.arguments().stream().map(a -> of(a, system, locale)).toArray();
        if (message.code().equals(Message.PLAIN)) {
            return (String) words[0];
        }
        String sentence = messages.getMessage(PREFIX + message.code(), words, null, locale);
        return sentence == null ? message.toString() : sentence;
    }

    /** @return what stands in a sentence, for whoever asks */
    public String of(MessageArgument argument) {
        return of(argument, units.get(), LocaleContextHolder.getLocale());
    }

    private String of(MessageArgument argument, UnitSystem system, Locale locale) {
        if (argument instanceof SiFigure f) {
            return new FigureWords(messages, system, locale).of(f);
        }
        if (argument instanceof Message m) {
            return of(m, system, locale);
        }
        if (argument instanceof MessageArgument.FieldName f) {
            return text("field." + f.field(), f.field(), locale);
        }
        if (argument instanceof MessageArgument.FieldValue v) {
            return BuildField.ofKey(v.field())
                    .map(f -> new FigureWords(messages, system, locale).plain(v.si(), f.kind()))
                    .orElseGet(v::toString);
        }
        if (argument instanceof MessageArgument.OptionName o) {
            return text("option." + o.field() + "." + o.token(), o.token(), locale);
        }
        if (argument instanceof MessageArgument.DutyName d) {
            return duty(d.duty(), d.label(), locale);
        }
        if (argument instanceof MessageArgument.PointName p) {
            return point(p.duty(), p.point(), p.label(), locale);
        }
        return ((MessageArgument.Text) argument).text();
    }

    /** Figures for whoever asks. */
    public FigureWords figures() {
        return new FigureWords(messages, units.get(), LocaleContextHolder.getLocale());
    }

    /** Name of a duty: the reader's word for those that come with calc-core, else what its author calls it. */
    public String duty(String id, String label, Locale locale) {
        return text(PREFIX + "duty." + id, label, locale);
    }

    /** Name of an operating point, likewise. */
    public String point(String duty, String id, String label, Locale locale) {
        return text(PREFIX + "duty." + duty + "." + id, label, locale);
    }

    /** What a duty's figures rest on, likewise. */
    public String basis(String duty, String source, Locale locale) {
        return text(PREFIX + "duty-basis." + duty, source, locale);
    }

    private String text(String key, String otherwise, Locale locale) {
        return messages.getMessage(key, null, otherwise, locale);
    }
}

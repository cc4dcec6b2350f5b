package headertank.app.glossary;

import headertank.app.field.FieldText;
import headertank.app.field.FieldUnit;
import headertank.app.unit.Dimension;
import headertank.calc.carspec.BuildField;
import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Every term in the reader's language. Pages link to one by {@code @{/glossary}} and its word behind a hash sign. */
@Component
class Glossary {

    /**
     * One line.
     *
     * @param word behind the hash sign of a link
     * @param name as pages write it
     * @param sentence what it means
     * @param unit the unit that it is shown in, empty for what has none
     * @param where where it is used, in words
     */
    record Line(String word, String name, String sentence, String unit, String where) {}

    private final MessageSource messages;
    private final FieldText text;

    Glossary(MessageSource messages, FieldText text) {
        this.messages = messages;
        this.text = text;
    }

    /** By name, in the reader's alphabet; only those whose name, sentence and place hold every one of the words. */
    List<Line> lines(String words) {
        Locale locale = LocaleContextHolder.getLocale();
        List<Line> lines = new ArrayList<>();
        for (Term term : Term.values()) {
            lines.add(line(term, locale));
        }
        for (BuildField field : BuildField.values()) {
            lines.add(line(field, locale));
        }
        Collator alphabet = Collator.getInstance(locale);
        return lines.stream()
                .filter(line -> holds(line, words, locale))
                .sorted(Comparator.comparing(Line::name, alphabet))
                .toList();
    }

    private Line line(Term term, Locale locale) {
        String key = "glossary." + term.word();
        return new Line(
                term.word(),
                messages.getMessage(key, null, locale),
                messages.getMessage(key + ".says", null, locale),
                term.dimension().map(this::unit).orElse(""),
                messages.getMessage(key + ".where", null, locale));
    }

    private Line line(BuildField field, Locale locale) {
        return new Line(
                field.name(),
                text.label(field),
                messages.getMessage(key(field), null, locale),
                field.isChoice() ? "" : unit(FieldUnit.of(field)),
                messages.getMessage("glossary.where.field", new Object[] {text.group(field.group())}, locale));
    }

    /** The rows of a table say the same of each. */
    private static String key(BuildField field) {
        return "glossary.field." + field.key().replaceFirst("(?<=[.]row)\\d", "");
    }

    private String unit(Dimension dimension) {
        return dimension.symbol(text.system());
    }

    private static boolean holds(Line line, String words, Locale locale) {
        String all =
                String.join(" ", line.name(), line.sentence(), line.where()).toLowerCase(locale);
        return Stream.of(words.strip().toLowerCase(locale).split("\\s+")).allMatch(all::contains);
    }
}

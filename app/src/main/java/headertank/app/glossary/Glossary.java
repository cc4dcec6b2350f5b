package headertank.app.glossary;

import headertank.app.field.FieldText;
import headertank.app.field.FieldUnit;
import headertank.app.language.EditDistance;
import headertank.app.unit.Dimension;
import headertank.calc.carspec.BuildField;
import jakarta.servlet.http.HttpServletRequest;
import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerMapping;

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
     * @param shown as pages write it in a sentence or above a column, where that is shorter
     * @param part of the car that the field belongs to, in words; empty for a word that is no field
     */
    record Line(String word, String name, String sentence, String unit, String where, String shown, String part) {}

    /** A shorter word is taken as it is typed: with a letter changed it would be another one. */
    private static final int FORGIVEN_FROM = 4;

    private final MessageSource messages;
    private final FieldText text;
    private final HttpServletRequest request;

    Glossary(MessageSource messages, FieldText text, HttpServletRequest request) {
        this.messages = messages;
        this.text = text;
        this.request = request;
    }

    /** What the page on show uses, in its own order. */
    public List<Line> here() {
        Object pattern = request.getAttribute(HandlerMapping.BEST_MATCHING_PATTERN_ATTRIBUTE);
        Locale locale = LocaleContextHolder.getLocale();
        return PageTerms.of(String.valueOf(pattern)).stream()
                .map(term -> line(term, locale))
                .toList();
    }

    /**
     * By name, in the reader's alphabet; only those whose name, sentence and place hold every one of the words, in any order, each
     * with at most one letter wrong.
     */
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
        String name = messages.getMessage(key, null, locale);
        return new Line(
                term.word(),
                name,
                messages.getMessage(key + ".says", null, locale),
                term.dimension().map(this::unit).orElse(""),
                messages.getMessage(key + ".where", null, locale),
                messages.getMessage(key + ".on", null, name.replaceFirst(",.*", ""), locale),
                "");
    }

    private Line line(BuildField field, Locale locale) {
        return new Line(
                field.name(),
                text.label(field),
                messages.getMessage(key(field), null, locale),
                field.isChoice() ? "" : unit(FieldUnit.of(field)),
                messages.getMessage("glossary.where.field", new Object[] {text.group(field.group())}, locale),
                text.label(field),
                text.group(field.group()));
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
        List<String> has = List.of(all.split("[^\\p{L}\\p{N}]+"));
        return Stream.of(words.strip().toLowerCase(locale).split("\\s+"))
                .allMatch(word -> all.contains(word) || has.stream().anyMatch(h -> isNearly(word, h)));
    }

    /** Whether somebody may have meant the word, or how it begins. */
    private static boolean isNearly(String typed, String word) {
        if (typed.length() < FORGIVEN_FROM || word.length() < typed.length() - 1) {
            return false;
        }
        return Stream.of(typed.length() - 1, typed.length(), typed.length() + 1)
                .filter(length -> length <= word.length())
                .anyMatch(length -> EditDistance.between(typed, word.substring(0, length)) <= 1);
    }
}

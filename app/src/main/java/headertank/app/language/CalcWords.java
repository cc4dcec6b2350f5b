package headertank.app.language;

import headertank.app.unit.DecimalSign;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/**
 * What calc-core says, in the language of the page. calc-core and the checks that are stored speak English; each of its
 * texts stands in {@code messages/calc.properties}, some with {@code {0}} in place of a figure, and is found there by its
 * wording. A text that is not there, such as one of a plug-in, is shown as it is.
 */
@Component("calcWords")
public final class CalcWords {

    private static final String BUNDLE = "messages/calc";

    private record Form(Pattern pattern, String key) {}

    private final MessageSource messages;
    private final Catalogue catalogue;

    /** The English texts, by wording and by form. */
    private record Catalogue(Map<String, String> keys, List<Form> forms) {}

    public CalcWords(MessageSource messages) {
        this.messages = messages;
        this.catalogue = read(messages);
    }

    private static Catalogue read(MessageSource messages) {
        Map<String, String> keys = new TreeMap<>();
        List<Form> forms = new ArrayList<>();
        Object[] places = {"\u0001" + 0 + "\u0002", "\u0001" + 1 + "\u0002", "\u0001" + 2 + "\u0002"};
        for (String key :
                new TreeSet<>(ResourceBundle.getBundle(BUNDLE, Locale.ROOT).keySet())) {
            String text = messages.getMessage(key, places, Locale.ENGLISH);
            if (text.indexOf('\u0001') < 0) {
                keys.put(text, key);
            } else {
                forms.add(new Form(pattern(text), key));
            }
        }
        return new Catalogue(keys, forms);
    }

    private static Pattern pattern(String text) {
        StringBuilder pattern = new StringBuilder();
        Matcher place = Pattern.compile("\u0001(\\d)\u0002").matcher(text);
        int end = 0;
        while (place.find()) {
            pattern.append(Pattern.quote(text.substring(end, place.start())))
                    .append("(?<a")
                    .append(place.group(1))
                    .append(">.+?)");
            end = place.end();
        }
        return Pattern.compile(
                pattern.append(Pattern.quote(text.substring(end))).toString());
    }

    /** @return the text in the language of the page; as it is in English, and when nobody has translated it */
    public String of(String english) {
        return of(english, LocaleContextHolder.getLocale());
    }

    /** @return the same for a language given */
    public String of(String english, Locale locale) {
        if (english == null || english.isEmpty() || Locale.ENGLISH.getLanguage().equals(locale.getLanguage())) {
            return english;
        }
        String key = catalogue.keys().get(english);
        if (key != null) {
            return messages.getMessage(key, null, locale);
        }
        for (Form form : catalogue.forms()) {
            Matcher m = form.pattern().matcher(english);
            if (m.matches()) {
                return messages.getMessage(form.key(), figures(m, locale), locale);
            }
        }
        return english;
    }

    private Object[] figures(Matcher m, Locale locale) {
        List<Object> figures = new ArrayList<>();
        for (int i = 0; i < m.groupCount(); i++) {
            String figure = m.group("a" + i);
            figures.add(figure.matches("[+-]?\\d+\\.\\d+") ? DecimalSign.in(figure, locale) : of(figure, locale));
        }
        return figures.toArray();
    }
}

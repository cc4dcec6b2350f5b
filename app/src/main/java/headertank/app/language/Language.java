package headertank.app.language;

import java.util.Arrays;
import java.util.Collections;
import java.util.Locale;
import java.util.Optional;

/** A language that every text of the pages exists in. */
public enum Language {
    ENGLISH(Locale.ENGLISH, "English"),
    GERMAN(Locale.GERMAN, "Deutsch");

    private final Locale locale;
    private final String ownName;

    Language(Locale locale, String ownName) {
        this.locale = locale;
        this.ownName = ownName;
    }

    public Locale locale() {
        return locale;
    }

    /** The code of ISO 639-1, as it stands in the lang attribute of a page. */
    public String code() {
        return locale.getLanguage();
    }

    /** Its name in itself. */
    public String ownName() {
        return ownName;
    }

    /** The language with this code, if there is one. */
    public static Optional<Language> ofCode(String code) {
        return Arrays.stream(values()).filter(l -> l.code().equals(code)).findFirst();
    }

    /** The first language that a browser asks for and that is here, else English. */
    static Language asked(Iterable<Locale> wanted) {
        for (Locale l : wanted) {
            Optional<Language> found = ofCode(l.getLanguage());
            if (found.isPresent()) {
                return found.get();
            }
        }
        return ENGLISH;
    }

    /** @return what a browser asks for, most wanted first; English for one that asks for nothing */
    static Language asked(jakarta.servlet.http.HttpServletRequest request) {
        return request.getHeader("Accept-Language") == null ? ENGLISH : asked(Collections.list(request.getLocales()));
    }
}

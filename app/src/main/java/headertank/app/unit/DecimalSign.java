package headertank.app.unit;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.springframework.context.i18n.LocaleContext;
import org.springframework.context.i18n.LocaleContextHolder;

/** The sign before the decimals, as the reader of the page writes it; a point where no page is being read. */
public final class DecimalSign {

    private DecimalSign() {}

    static boolean isComma() {
        LocaleContext reader = LocaleContextHolder.getLocaleContext();
        Locale locale = reader == null ? null : reader.getLocale();
        return locale != null && DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',';
    }

    /** @return a number written with a point, with the reader's sign in its place */
    public static String in(String number) {
        return isComma() ? number.replace('.', ',') : number;
    }
}

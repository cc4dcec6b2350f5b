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
        return locale != null && isComma(locale);
    }

    private static boolean isComma(Locale locale) {
        return DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',';
    }

    /** @return what somebody typed, whose decimals follow a point or a comma, as the reader writes it */
    public static String inTyped(String typed) {
        return typed.replaceAll("[.,](?=\\d)", isComma() ? "," : ".");
    }

    /** @return the same with a point, for a file that every reader can read back */
    public static String inFile(String typed) {
        return typed.replaceAll(",(?=\\d)", ".");
    }

    /** @return a number written with a point, with the sign of a language in its place */
    public static String in(String number, Locale locale) {
        return isComma(locale) ? number.replace('.', ',') : number;
    }

    /** @return a number written with a point, with the reader's sign in its place */
    public static String in(String number) {
        return isComma() ? number.replace('.', ',') : number;
    }
}

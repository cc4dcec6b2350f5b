package headertank.app.csv;

import java.util.regex.Pattern;

/**
 * Text that no spreadsheet takes for a formula. A cell that begins with a sign of formulas gets an apostrophe before it, and so
 * does every place inside a cell at which a spreadsheet of another locale, which separates by semicolons, tabs or bars, would
 * begin a cell of its own: {@code x;=1+1 → x;'=1+1}. Signs of full width count too. Reading takes one apostrophe away at each
 * such place, so that whatever is written reads back.
 */
final class SafeCell {

    private static final String BEGINNING = "(^|[,;|\\t\\r\\n])([\\s\"\\u00a0\\u3000]*+";
    private static final String SIGN = "(?=[=+\\-@＝＋－＠])";
    private static final Pattern OPEN = Pattern.compile(BEGINNING + "'*+)" + SIGN);
    private static final Pattern GUARDED = Pattern.compile(BEGINNING + "'*)'" + SIGN);
    private static final Pattern CONTROL = Pattern.compile("\\A('*)(?=[\\t\\r])");
    private static final Pattern GUARDED_CONTROL = Pattern.compile("\\A('*)'(?=[\\t\\r])");

    private SafeCell() {}

    static String guarded(String cell) {
        return CONTROL.matcher(OPEN.matcher(cell).replaceAll("$1$2'")).replaceFirst("$1'");
    }

    static String unguarded(String cell) {
        return GUARDED.matcher(GUARDED_CONTROL.matcher(cell).replaceFirst("$1")).replaceAll("$1$2");
    }
}

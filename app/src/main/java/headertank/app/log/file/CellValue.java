package headertank.app.log.file;

import headertank.app.unit.Scaling;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as loggers write them: point or comma, thousands set apart or not, a unit behind them, switches in words. */
public final class CellValue {

    /** No reading: nothing, or a word for nothing. */
    public static final double NONE = Double.NaN;

    /** Something that is neither a number nor nothing. */
    public static final double BAD = Double.POSITIVE_INFINITY;

    private static final Set<String> NOTHING = Set.of(
            "-",
            "--",
            "---",
            "n/a",
            "#n/a",
            "na",
            "nan",
            "-nan",
            "null",
            "none",
            "nil",
            "n.a.",
            "k.a.",
            "?",
            ".",
            "void",
            "missing",
            "#wert!",
            "#value!",
            "inf",
            "-inf",
            "+inf",
            "infinity",
            "-infinity");
    private static final Set<String> ON = Set.of("on", "true", "yes", "an", "ein", "ja", "wahr", "active", "aktiv");
    private static final Set<String> OFF = Set.of("off", "false", "no", "aus", "nein", "falsch", "inactive", "inaktiv");

    private static final Pattern WITH_UNIT =
            Pattern.compile("([+-]?[\\d.,]+(?:[eE][+-]?\\d+)?)\\s*([^\\d\\s+.,-].{0,11})");
    private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final Pattern GROUPS = Pattern.compile("[+-]?\\d{1,3}([.,'])\\d{3}(\\1\\d{3})*([.,]\\d*)?");

    private static final int EXACT_DIGITS = 15;
    private static final double[] TENS = new double[EXACT_DIGITS + 1];

    static {
        TENS[0] = 1;
        for (int i = 1; i < TENS.length; i++) {
            TENS[i] = TENS[i - 1] * 10;
        }
    }

    private CellValue() {}

    /**
     * @param from first character of the cell, to the one behind its last, blanks around it taken away
     * @param commaGroups whether a comma sets thousands apart in this file
     * @return the number, {@link #NONE} or {@link #BAD}
     */
    static double of(char[] text, int from, int to, boolean commaGroups) {
        if (from == to) {
            return NONE;
        }
        int i = from;
        boolean negative = text[i] == '-';
        if (negative || text[i] == '+') {
            i++;
        }
        long digits = 0;
        int count = 0;
        int point = -1;
        for (; i < to; i++) {
            char c = text[i];
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                if (++count > EXACT_DIGITS) {
                    return slow(new String(text, from, to - from), commaGroups);
                }
            } else if ((c == '.' || c == ',' && !commaGroups) && point < 0) {
                point = count;
            } else {
                return slow(new String(text, from, to - from), commaGroups);
            }
        }
        if (count == 0) {
            return slow(new String(text, from, to - from), commaGroups);
        }
        double value = point < 0 ? digits : digits / TENS[count - point];
        return negative ? -value : value;
    }

    /** The same of a whole text. */
    public static double of(String cell, boolean commaGroups) {
        char[] text = cell.strip().toCharArray();
        return of(text, 0, text.length, commaGroups);
    }

    private static double slow(String cell, boolean commaGroups) {
        String s = cell.replace('\u2212', '-')
                .replaceAll("[\\u00a0\\u2009\\u202f]", "")
                .strip();
        String word = s.toLowerCase(Locale.ROOT);
        if (word.isEmpty() || NOTHING.contains(word)) {
            return NONE;
        }
        if (ON.contains(word) || OFF.contains(word)) {
            return ON.contains(word) ? 1 : 0;
        }
        String number = plain(s, commaGroups);
        if (number.isEmpty()) {
            Matcher m = WITH_UNIT.matcher(s);
            number = m.matches() && Scaling.isUnit(m.group(2)) ? plain(m.group(1), commaGroups) : "";
        }
        if (number.isEmpty()) {
            return BAD;
        }
        double value = Double.parseDouble(number);
        return Double.isInfinite(value) ? BAD : value;
    }

    /** The unit that stands behind a number in its cell; empty for none. */
    static String unit(String cell) {
        Matcher m = WITH_UNIT.matcher(cell.strip());
        return m.matches() && Scaling.isUnit(m.group(2)) ? m.group(2).strip() : "";
    }

    /** The number with a point and without groups; empty when it is none. */
    private static String plain(String s, boolean commaGroups) {
        int commas = count(s, ',');
        int points = count(s, '.');
        String number = s;
        if (commas + points > 1 || commaGroups && commas > 0 || s.indexOf('\'') > 0) {
            Matcher m = GROUPS.matcher(s);
            if (!m.matches()) {
                return "";
            }
            String group = m.group(1);
            number = s.replace(group, "");
        }
        number = number.replace(',', '.');
        return PLAIN.matcher(number).matches() ? number : "";
    }

    static int count(String s, char c) {
        return (int) s.chars().filter(x -> x == c).count();
    }
}

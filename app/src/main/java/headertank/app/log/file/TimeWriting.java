package headertank.app.log.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the time of a row is written. */
public enum TimeWriting {
    /** A number of seconds, milliseconds, minutes or hours since any moment. */
    NUMBER,
    /** {@code h:m:s.f} or {@code m:s.f}; it may pass midnight. */
    CLOCK,
    /** A date and a time of day, the day before the month where nothing tells. */
    DATE,
    /** The same, the month before the day. */
    DATE_MONTH_FIRST;

    private static final Pattern CLOCK_TEXT =
            Pattern.compile("(-?)(?:(\\d{1,3}):)?(\\d{1,3}):(\\d{1,2})(?:[.,:](\\d{1,9}))?\\s*([aApP]\\.?[mM]\\.?)?");
    private static final Pattern DATE_TEXT =
            Pattern.compile("(\\d{1,4})([-/.\\s])\\s*(\\d{1,2}|\\p{L}{3,9})\\.?[-/.\\s]\\s*(\\d{2,4})[T\\s,]+"
                    + "(\\d{1,2}):(\\d{1,2})(?::(\\d{1,2})(?:[.,:](\\d{1,9}))?)?"
                    + "\\s*([aApP]\\.?[mM]\\.?)?\\s*(Z|UTC|[+-]\\d{2}:?\\d{2})?");
    /** English and German, as far as they differ. */
    private static final List<String> MONTHS = List.of(
            "jan", "feb", "mar|mae|mär", "apr", "may|mai", "jun", "jul", "aug", "sep", "oct|okt", "nov", "dec|dez");

    private static final double DAY_S = 86_400;

    /** Seconds since any moment, {@link CellValue#NONE} or {@link CellValue#BAD}. */
    double seconds(char[] text, int from, int to, double secondsPerUnit, boolean commaGroups) {
        if (this == NUMBER) {
            double number = CellValue.of(text, from, to, commaGroups);
            return number == CellValue.BAD ? number : number * secondsPerUnit;
        }
        if (from == to) {
            return CellValue.NONE;
        }
        String cell = new String(text, from, to - from);
        return this == CLOCK ? clock(cell) : date(cell, this == DATE_MONTH_FIRST);
    }

    static double clock(String cell) {
        Matcher m = CLOCK_TEXT.matcher(cell);
        if (!m.matches()) {
            return CellValue.BAD;
        }
        double hours = m.group(2) == null ? 0 : Integer.parseInt(m.group(2));
        int minutes = Integer.parseInt(m.group(3));
        int seconds = Integer.parseInt(m.group(4));
        if (seconds > 59 || m.group(2) != null && minutes > 59) {
            return CellValue.BAD;
        }
        double t = 3600 * noon(hours, m.group(6)) + 60 * minutes + seconds + fraction(m.group(5));
        return m.group(1).isEmpty() ? t : -t;
    }

    private static double noon(double hours, String half) {
        if (half == null) {
            return hours;
        }
        double h = hours % 12;
        return half.toLowerCase(Locale.ROOT).startsWith("p") ? h + 12 : h;
    }

    private static double fraction(String digits) {
        return digits == null ? 0 : Integer.parseInt(digits) / Math.pow(10, digits.length());
    }

    static double date(String cell, boolean monthFirst) {
        Matcher m = DATE_TEXT.matcher(cell);
        if (!m.matches()) {
            return CellValue.BAD;
        }
        int[] d = parts(m, monthFirst);
        int hour = Integer.parseInt(m.group(5));
        int minute = Integer.parseInt(m.group(6));
        int second = m.group(7) == null ? 0 : Integer.parseInt(m.group(7));
        if (d.length == 0 || hour > 24 || minute > 59 || second > 60) {
            return CellValue.BAD;
        }
        try {
            double day = LocalDate.of(d[0], d[1], d[2]).toEpochDay() * DAY_S;
            double time = 3600 * noon(hour, m.group(9)) + 60 * minute + second + fraction(m.group(8));
            return day + time - offset(m.group(10));
        } catch (DateTimeException e) {
            return CellValue.BAD;
        }
    }

    /** Year, month, day; empty when they are none. */
    private static int[] parts(Matcher m, boolean monthFirst) {
        int first = Integer.parseInt(m.group(1));
        int third = Integer.parseInt(m.group(4));
        boolean named = !Character.isDigit(m.group(3).charAt(0));
        int second = named ? month(m.group(3)) : Integer.parseInt(m.group(3));
        if (m.group(1).length() == 4) {
            return new int[] {first, second, third};
        }
        int year = m.group(4).length() == 2 ? 2000 + third : third;
        if (second < 1) {
            return new int[0];
        }
        return monthFirst && !named && !m.group(2).equals(".")
                ? new int[] {year, first, second}
                : new int[] {year, second, first};
    }

    private static int month(String name) {
        String start = name.substring(0, 3).toLowerCase(Locale.ROOT);
        for (int i = 0; i < MONTHS.size(); i++) {
            if (List.of(MONTHS.get(i).split("\\|")).contains(start)) {
                return i + 1;
            }
        }
        return 0;
    }

    private static double offset(String zone) {
        if (zone == null || !zone.matches("[+-].*")) {
            return 0;
        }
        String digits = zone.substring(1).replace(":", "");
        int minutes = 60 * Integer.parseInt(digits.substring(0, 2)) + Integer.parseInt(digits.substring(2));
        return 60.0 * (zone.charAt(0) == '-' ? -minutes : minutes);
    }

    /** Whether a cell looks like a time of day or a date with one. */
    static boolean isTime(String cell) {
        String c = cell.strip();
        return c.indexOf(':') > 0
                && (clock(c) != CellValue.BAD || date(c, false) != CellValue.BAD || date(c, true) != CellValue.BAD);
    }
}

package headertank.app.stored;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes JSON in the one form that RFC 8785 allows: keys sorted by their UTF-16 code units, no space, numbers as ECMAScript
 * prints them. Equal values give equal text, hence equal hashes, on every machine.
 */
public final class CanonicalJson {

    private CanonicalJson() {}

    /** Takes maps with text keys, lists, text, numbers and truth values. */
    public static String write(Object value) {
        StringBuilder out = new StringBuilder();
        append(value, out);
        return out.toString();
    }

    private static void append(Object value, StringBuilder out) {
        if (value instanceof Map<?, ?> map) {
            object(map, out);
        } else if (value instanceof List<?> list) {
            out.append('[');
            for (Iterator<?> i = list.iterator(); i.hasNext(); ) {
                append(i.next(), out);
                out.append(i.hasNext() ? "," : "");
            }
            out.append(']');
        } else if (value instanceof String text) {
            string(text, out);
        } else if (value instanceof Number number) {
            out.append(number(number.doubleValue()));
        } else if (value instanceof Boolean) {
            out.append(value);
        } else {
            throw new IllegalArgumentException("not to be written as JSON: " + value);
        }
    }

    private static void object(Map<?, ?> map, StringBuilder out) {
        Map<String, Object> sorted = new TreeMap<>();
        map.forEach((key, item) -> sorted.put((String) key, item));
        out.append('{');
        String gap = "";
        for (Map.Entry<String, Object> entry : sorted.entrySet()) {
            out.append(gap);
            string(entry.getKey(), out);
            out.append(':');
            append(entry.getValue(), out);
            gap = ",";
        }
        out.append('}');
    }

    private static void string(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\b' -> out.append("\\b");
                case '\t' -> out.append("\\t");
                case '\n' -> out.append("\\n");
                case '\f' -> out.append("\\f");
                case '\r' -> out.append("\\r");
                default -> {
                    if (c < 0x20) {
                        out.append(String.format("\\u%04x", (int) c));
                    } else if (Character.isSurrogate(c)) {
                        i = pair(text, i, out);
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        out.append('"');
    }

    private static int pair(String text, int i, StringBuilder out) {
        boolean whole = i + 1 < text.length() && Character.isSurrogatePair(text.charAt(i), text.charAt(i + 1));
        if (!whole) {
            throw new IllegalArgumentException("half a character at " + i);
        }
        out.append(text, i, i + 2);
        return i + 1;
    }

    /** A number as ECMAScript's Number::toString prints it. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("JSON has no " + value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal shortest = shortest(Math.abs(value));
        String digits = shortest.unscaledValue().toString();
        int k = digits.length();
        int n = k - shortest.scale();
        String sign = value < 0 ? "-" : "";
        if (n > 21 || n <= -6) {
            String fraction = k == 1 ? "" : "." + digits.substring(1);
            return sign + digits.charAt(0) + fraction + "e" + (n > 0 ? "+" : "-") + Math.abs(n - 1);
        }
        if (n <= 0) {
            return sign + "0." + "0".repeat(-n) + digits;
        }
        return k <= n ? sign + digits + "0".repeat(n - k) : sign + digits.substring(0, n) + "." + digits.substring(n);
    }

    /** The fewest digits that read back as the value; of several such, the nearest. {@code Double.toString} of Java 17 may give more. */
    private static BigDecimal shortest(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 1; digits <= 17; digits++) {
            BigDecimal best = null;
            for (RoundingMode mode : List.of(RoundingMode.HALF_EVEN, RoundingMode.DOWN, RoundingMode.UP)) {
                BigDecimal tried = exact.round(new MathContext(digits, mode));
                boolean nearer = best == null
                        || tried.subtract(exact)
                                        .abs()
                                        .compareTo(best.subtract(exact).abs())
                                < 0;
                if (tried.doubleValue() == value && nearer) {
                    best = tried;
                }
            }
            if (best != null) {
                return best.stripTrailingZeros();
            }
        }
        throw new IllegalStateException("17 digits always suffice: " + value);
    }
}

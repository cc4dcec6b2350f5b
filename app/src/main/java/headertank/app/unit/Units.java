package headertank.app.unit;

import headertank.app.unit.UnitException.Code;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Text with a unit to SI and back. In templates: {@code ${@units.show(x, 'AIR_FLOW')}}. */
@Component("units")
public final class Units {

    private static final String GAP = "[ \\u00a0\\u2009\\u202f]";
    /**
     * A number, then anything: the unit. Groups of three digits may be set apart by spaces. Repeats are bounded, for a text of
     * a million commas is no reason to run out of stack.
     */
    private static final Pattern NUMBER = Pattern.compile(
            "([+-]?)((?:\\d{1,3}(?:" + GAP + "\\d{3}){1,20}(?!\\d)|\\d+)?(?:[.,]\\d*){0,20}"
                    + "(?:[eE][+-]?\\d{1,3}(?![\\d.,a-zA-Z]))?)(.*)",
            Pattern.DOTALL);

    private static final Pattern PLAIN = Pattern.compile("(\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d{1,3})?");
    private static final Pattern THOUSANDS_BY_POINT = Pattern.compile("([1-9]\\d{0,2})\\.(\\d{3})((?:[^\\d.,].*)?)");
    private static final Pattern THOUSANDS_BY_COMMA = Pattern.compile("([1-9]\\d{0,2}),(\\d{3})((?:[^\\d.,].*)?)");
    private static final Pattern THOUSANDS_OR_DECIMAL = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

    /**
     * Reads a text such as {@code 2500 cfm}, {@code 1,3 bar}, {@code −5 °C}; a bare number is taken in the shop's unit. A
     * comma before three digits is refused as ambiguous unless the reader's language writes decimals with a comma.
     *
     * @return the value in SI units
     * @throws UnitException with what is accepted
     */
    public static double parse(String text, Dimension dimension, UnitSystem system) {
        String typed = text == null ? "" : text.strip();
        if (typed.isEmpty()) {
            throw new UnitException(Code.EMPTY, typed, dimension);
        }
        Matcher parts = NUMBER.matcher(withHyphen(typed));
        if (!parts.matches()) {
            throw new UnitException(Code.NOT_A_NUMBER, typed, dimension);
        }
        double number = number(parts.group(2).replaceAll(GAP, ""), typed, dimension);
        if (dimension == Dimension.FRACTION && parts.group(3).isBlank() && number > 0 && number < 1) {
            throw new UnitException(Code.AMBIGUOUS_SHARE, typed, dimension);
        }
        Unit unit = unit(parts.group(3), typed, dimension, system);
        double si = unit.toSi(parts.group(1).equals("-") ? -number : number);
        if (dimension == Dimension.TEMPERATURE && si < -1e-9) {
            throw new UnitException(Code.BELOW_ABSOLUTE_ZERO, typed, dimension);
        }
        return si;
    }

    /**
     * The same text without a mark between thousands, where there is one that is not the reader's decimal sign and may be meant so:
     * {@code 1.300 mbar} for somebody who writes decimals with a comma. Empty for everything else.
     */
    public static Optional<String> withoutThousands(String text) {
        Matcher number = (DecimalSign.isComma() ? THOUSANDS_BY_POINT : THOUSANDS_BY_COMMA).matcher(text.strip());
        return number.matches() ? Optional.of(number.group(1) + number.group(2) + number.group(3)) : Optional.empty();
    }

    private static String withHyphen(String typed) {
        return typed.replace('−', '-').replace('‐', '-').replace('‑', '-').replace('–', '-');
    }

    private static double number(String digits, String typed, Dimension dimension) {
        if (!DecimalSign.isComma() && THOUSANDS_OR_DECIMAL.matcher(digits).matches()) {
            throw new UnitException(Code.AMBIGUOUS_COMMA, typed, dimension);
        }
        String point = digits.indexOf(',') == digits.lastIndexOf(',') && digits.indexOf('.') < 0
                ? digits.replace(',', '.')
                : digits;
        if (!PLAIN.matcher(point).matches()) {
            throw new UnitException(Code.NOT_A_NUMBER, typed, dimension);
        }
        return Double.parseDouble(point);
    }

    private static Unit unit(String written, String typed, Dimension dimension, UnitSystem system) {
        String plain = UnitText.plain(written);
        if (plain.isEmpty() || isDegreeOfTheShop(plain, dimension)) {
            return dimension.unit(system);
        }
        Optional<Unit> found = dimension.units().stream()
                .filter(u -> u.spellings().contains(plain))
                .findFirst();
        return found.orElseThrow(() -> new UnitException(Code.UNKNOWN_UNIT, typed, dimension));
    }

    /** A degree without a letter, on a thermometer: the shop's own. */
    private static boolean isDegreeOfTheShop(String plain, Dimension dimension) {
        return plain.equals("deg")
                && (dimension == Dimension.TEMPERATURE || dimension == Dimension.TEMPERATURE_DIFFERENCE);
    }

    /** Shows an SI value in a metric shop's unit, rounded to what makes sense there: {@code 0.85 → 3060 m³/h}. */
    public static String show(double si, Dimension dimension) {
        return show(si, dimension, UnitSystem.METRIC);
    }

    /** Shows an SI value in the shop's unit. Three digits are kept for small values, so that 0.0123 does not become 0. */
    public static String show(double si, Dimension dimension, UnitSystem system) {
        Unit unit = dimension.unit(system);
        String number = round(unit.fromSi(si), unit.decimals());
        return unit.symbol().equals("°") ? number + "°" : (number + " " + unit.symbol()).strip();
    }

    /** What was typed, with the shop's unit added if it came without one, so that it still reads the same in another shop. */
    public static String withUnit(String text, Dimension dimension, UnitSystem system) {
        String typed = text.strip();
        String symbol = dimension.symbol(system);
        if (symbol.isEmpty()) {
            return typed;
        }
        if (isBare(typed)) {
            return typed + " " + symbol;
        }
        Matcher parts = NUMBER.matcher(withHyphen(typed));
        boolean degree = parts.matches() && isDegreeOfTheShop(UnitText.plain(parts.group(3)), dimension);
        return degree ? parts.group(1) + parts.group(2) + " " + symbol : typed;
    }

    /** Whether a number stands there alone. */
    public static boolean isBare(String typed) {
        return typed.strip().matches("[+\\-−‐‑–]?[\\d.,eE \\u00a0\\u2009\\u202f]+");
    }

    /**
     * What a bare number may have been meant as, when it makes no sense in the shop's unit: the unit of the other kind of shop
     * first, then the others; empty when the text names a unit.
     */
    public static List<String> inOtherUnits(String text, Dimension dimension, UnitSystem system) {
        String typed = text.strip();
        if (!isBare(typed)) {
            return List.of();
        }
        Unit own = dimension.unit(system);
        Unit others = dimension.unit(system == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US);
        return Stream.concat(Stream.of(others), dimension.units().stream())
                .distinct()
                .filter(unit -> unit != own && !unit.symbol().isEmpty())
                .map(unit -> typed + " " + unit.symbol())
                .toList();
    }

    /** The number alone, for a table whose heading carries the unit. */
    public static String number(double si, Dimension dimension, UnitSystem system) {
        Unit unit = dimension.unit(system);
        return round(unit.fromSi(si), unit.decimals());
    }

    /** Whether what was typed names the unit that the shop shows such values in, however it is spelt. */
    public static boolean isInShopUnit(String typed, Dimension dimension, UnitSystem system) {
        Matcher parts = NUMBER.matcher(typed.strip());
        return parts.matches() && dimension.unit(system).spellings().contains(UnitText.plain(parts.group(3)));
    }

    /** The number itself in the shop's unit, to go on reckoning with. */
    public static double value(double si, Dimension dimension, UnitSystem system) {
        return dimension.unit(system).fromSi(si);
    }

    /** What a number in the shop's unit is in SI. */
    public static double si(double number, Dimension dimension, UnitSystem system) {
        return dimension.unit(system).toSi(number);
    }

    private static String round(double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a number that can be shown: " + value);
        }
        int extra = 0;
        if (value != 0) {
            int leading = (int) Math.floor(Math.log10(Math.abs(value)));
            extra = Math.max(0, Math.min(6, -leading + 1));
        }
        int digits = Math.abs(value) < 1 ? Math.max(decimals, extra) : decimals;
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
        String text = digits > decimals ? rounded.stripTrailingZeros().toPlainString() : rounded.toPlainString();
        return DecimalSign.in(
                rounded.signum() == 0
                        ? BigDecimal.ZERO.setScale(Math.min(digits, decimals)).toPlainString()
                        : text.toLowerCase(Locale.ROOT));
    }
}

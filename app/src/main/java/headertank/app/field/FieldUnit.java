package headertank.app.field;

import headertank.app.language.FigureUnit;
import headertank.app.unit.DecimalSign;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.carspec.BuildField;
import java.math.BigDecimal;
import java.util.regex.Pattern;

/** The units in which a field’s number is written, and what people write short. */
public final class FieldUnit {

    private FieldUnit() {}

    public static Dimension of(BuildField field) {
        return FigureUnit.of(field.kind());
    }

    /** A share of one as people write it beside per cents. */
    private static final Pattern SHARE = Pattern.compile("0?[.,]\\d+");

    private static final Pattern HALVES = Pattern.compile("50 ?/ ?50");

    /** What people write short, written out: {@code 0.5} of a share is {@code 50 %}, and {@code 50/50} of a mix too. */
    static String unfold(BuildField field, String typed) {
        if (of(field) != Dimension.FRACTION) {
            return typed;
        }
        if (SHARE.matcher(typed).matches()) {
            BigDecimal percent = new BigDecimal(typed.replace(',', '.')).movePointRight(2);
            return DecimalSign.in(percent.stripTrailingZeros().toPlainString()) + " %";
        }
        return field == BuildField.COOLANT_GLYCOL && HALVES.matcher(typed).matches() ? "50 %" : typed;
    }

    /** Whether what was typed needs no word on how it was read: a number, alone or in the unit that the shop shows. */
    public static boolean isPlain(BuildField field, String typed, UnitSystem system) {
        return unfold(field, typed).equals(typed)
                && (Units.isBare(typed) || Units.isInShopUnit(typed, of(field), system));
    }

    /**
     * Reads what was typed; the fin pitch may be given as fins per length too, as the trade does.
     *
     * @throws UnitException when the text is no such quantity
     */
    public static double parse(BuildField field, String text, UnitSystem system) {
        Dimension dimension = of(field);
        try {
            return FigureUnit.toCore(Units.parse(text, dimension, system), field.kind());
        } catch (UnitException e) {
            if (field == BuildField.FIN_PITCH && e.code() == UnitException.Code.UNKNOWN_UNIT) {
                return 1 / Units.parse(text, Dimension.FINS_PER_LENGTH, system);
            }
            throw e;
        }
    }

    static String show(BuildField field, double si, UnitSystem system) {
        return Units.show(FigureUnit.toEdge(si, field.kind()), of(field), system);
    }
}

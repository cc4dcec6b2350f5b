package headertank.app.language;

import headertank.app.unit.DecimalSign;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.SiFigure;
import java.util.Locale;
import org.springframework.context.MessageSource;

/**
 * Figures of calc-core as one reader reads them: in the units of the shop, with a word where there is no number, and with
 * a bound in place of a number that no model stands for.
 */
public final class FigureWords {

    /** Hotter than 160 C is not printed as a number [K]: oil and coolant models end there; modelling choice. */
    public static final double HOTTEST_K = 433.15;

    /** A difference beyond this is not printed as a number [K]; modelling choice. */
    public static final double LARGEST_DIFFERENCE_K = 100;

    private final MessageSource messages;
    private final UnitSystem system;
    private final Locale locale;

    public FigureWords(MessageSource messages, UnitSystem system, Locale locale) {
        this.messages = messages;
        this.system = system;
        this.locale = locale;
    }

    /** A figure with its unit, without a plus sign. */
    public String of(SiFigure figure) {
        return of(figure.si(), figure.kind());
    }

    /** @param si the value in the SI unit of its kind */
    public String of(double si, FigureKind kind) {
        return switch (kind) {
            case TEMPERATURE -> temperature(si);
            case TEMPERATURE_DIFFERENCE -> difference(si);
            case PROBABILITY -> probability(si);
            default -> plain(si, kind);
        };
    }

    /** A difference of temperatures with its sign, bounded as the rest. */
    public String signed(double kelvin) {
        String shown = difference(kelvin);
        return kelvin > 0 && kelvin <= LARGEST_DIFFERENCE_K && Math.rint(10 * kelvin) > 0 ? "+" + shown : shown;
    }

    /** A figure as it is, whatever its size: one that somebody stated, or the bound of a range. */
    public String plain(double si, FigureKind kind) {
        return show(FigureUnit.toEdge(si, kind), FigureUnit.of(kind));
    }

    private String temperature(double kelvin) {
        return kelvin > HOTTEST_K
                ? text("model.above", show(HOTTEST_K, Dimension.TEMPERATURE))
                : show(kelvin, Dimension.TEMPERATURE);
    }

    private String difference(double kelvin) {
        if (Math.abs(kelvin) > LARGEST_DIFFERENCE_K) {
            double bound = Math.copySign(LARGEST_DIFFERENCE_K, kelvin);
            return text(kelvin < 0 ? "model.below" : "model.above", show(bound, Dimension.TEMPERATURE_DIFFERENCE));
        }
        return show(Math.rint(10 * kelvin) / 10, Dimension.TEMPERATURE_DIFFERENCE);
    }

    /** Estimated from samples: none found is not none there. */
    private String probability(double p) {
        if (Double.isNaN(p)) {
            return text("model.not-computed");
        }
        return p < 0.01
                ? text("model.under-one-percent")
                : p > 0.99 ? text("model.over-ninety-nine-percent") : Math.round(100 * p) + "\u00a0%";
    }

    private String show(double si, Dimension dimension) {
        if (!Double.isFinite(si)) {
            return text("model.none");
        }
        String shown = DecimalSign.in(Units.show(si, dimension, system), locale).replace(' ', '\u00a0');
        return shown.startsWith("-") ? "\u2212" + shown.substring(1) : shown;
    }

    private String text(String key, Object... arguments) {
        return messages.getMessage(key, arguments, locale);
    }
}

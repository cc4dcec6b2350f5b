package headertank.calc.quantity;

import java.util.Locale;

/**
 * A figure with what it is a figure of.
 *
 * @param si the value in the SI unit of its kind; may be infinite or not a number, which is for whoever shows it to say in words
 * @param kind what it is
 */
public record SiFigure(double si, FigureKind kind) implements MessageArgument {

    /** A negative zero becomes a plain one: no text format tells the two apart. */
    public SiFigure {
        si += 0.0;
    }

    /** @return value and unit, for logs */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.6g %s", si, kind.siUnit());
    }

    /** @return a temperature [K] */
    public static SiFigure temperature(double kelvin) {
        return new SiFigure(kelvin, FigureKind.TEMPERATURE);
    }

    /** @return a difference of temperatures [K] */
    public static SiFigure difference(double kelvin) {
        return new SiFigure(kelvin, FigureKind.TEMPERATURE_DIFFERENCE);
    }

    /** @return heat or power [W] */
    public static SiFigure power(double watt) {
        return new SiFigure(watt, FigureKind.POWER);
    }

    /** @return a current [A] */
    public static SiFigure current(double ampere) {
        return new SiFigure(ampere, FigureKind.CURRENT);
    }

    /** @return a charge, from ampere-hours */
    public static SiFigure ampereHours(double ampereHours) {
        return new SiFigure(3600 * ampereHours, FigureKind.CHARGE);
    }

    /** @return a flow of coolant or oil [m3/s] */
    public static SiFigure liquidFlow(double m3PerS) {
        return new SiFigure(m3PerS, FigureKind.LIQUID_FLOW);
    }

    /** @return a share of one [-] */
    public static SiFigure share(double share) {
        return new SiFigure(share, FigureKind.SHARE);
    }

    /** @return a number of things */
    public static SiFigure count(double number) {
        return new SiFigure(number, FigureKind.COUNT);
    }
}

package headertank.app.chart;

import headertank.app.chart.CurveChart.Tick;
import headertank.app.unit.DecimalSign;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Marks of a scale at values that are round in the unit they are read in. */
public final class Ticks {

    /** Steps of an axis of time that people divide hours by [s]. */
    private static final double[] TIMES_S = {30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14400};

    private Ticks() {}

    /**
     * Marks of a scale in SI, round in the shop's unit.
     *
     * @param least the smallest step that makes sense, in the shop's unit; 0 when any does
     * @param most steps
     */
    public static List<Tick> of(Scale scale, Dimension dimension, UnitSystem system, double least, int most) {
        double from = Units.value(scale.from(), dimension, system);
        double to = Units.value(scale.to(), dimension, system);
        int decimals = decimals(Scale.step(to - from, least, most));
        return Scale.steps(from, to, least, most).stream()
                .map(v -> new Tick(scale.at(Units.si(v, dimension, system)), text(v, decimals)))
                .toList();
    }

    /** Marks of a scale whose unit is the same for everybody. */
    public static List<Tick> plain(Scale scale, double least, int most) {
        int decimals = decimals(Scale.step(scale.to() - scale.from(), least, most));
        return Scale.steps(scale.from(), scale.to(), least, most).stream()
                .map(v -> new Tick(scale.at(v), text(v, decimals)))
                .toList();
    }

    /** The same with a sign before what is not zero: marks of a difference. */
    public static List<Tick> signed(List<Tick> ticks) {
        return ticks.stream()
                .map(t -> new Tick(
                        t.at(), t.text().matches("[0.,−]*") || t.text().startsWith("−") ? t.text() : "+" + t.text()))
                .toList();
    }

    /** Marks of an axis of time from its beginning, in minutes. */
    public static List<Tick> minutes(Scale time, int most) {
        double step = TIMES_S[TIMES_S.length - 1];
        for (int i = TIMES_S.length - 1; i >= 0 && (time.to() - time.from()) / TIMES_S[i] <= most; i--) {
            step = TIMES_S[i];
        }
        List<Tick> ticks = new ArrayList<>();
        for (double n = Math.ceil(time.from() / step); n * step <= time.to() + 1e-9; n++) {
            double minutes = n * step / 60;
            ticks.add(new Tick(time.at(n * step), text(minutes, minutes == Math.rint(minutes) ? 0 : 1)));
        }
        return ticks;
    }

    /** Digits after the point that tell neighbouring marks apart. */
    private static int decimals(double step) {
        return (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
    }

    private static String text(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return DecimalSign.in(rounded.toPlainString()).replace('-', '−');
    }
}

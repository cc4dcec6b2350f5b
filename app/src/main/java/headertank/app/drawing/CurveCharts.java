package headertank.app.drawing;

import headertank.app.drawing.CurveChart.Curve;
import headertank.app.drawing.CurveChart.Tick;
import headertank.app.unit.DecimalSign;
import headertank.app.unit.Dimension;
import headertank.calc.result.CoolingCurves;
import headertank.calc.result.CoolingCurves.AirPoint;
import headertank.calc.result.CoolingCurves.HeatPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Draws the curves behind a steady state. */
final class CurveCharts {

    private static final String LONG = "9 4";
    private static final String SHORT = "3 3";

    private final Words words;

    CurveCharts(Words words) {
        this.words = words;
    }

    /** What the core takes and what drives the air, against air flow. */
    CurveChart air(CoolingCurves c) {
        double most = c.air().get(c.air().size() - 1).flowM3PerS();
        double highest = Math.max(
                1.9 * c.at().corePa(),
                c.air().stream().mapToDouble(AirPoint::fanPa).max().orElse(0));
        Axes axes =
                new Axes(words, most, Dimension.AIR_FLOW, Math.max(20, 1.1 * highest), Dimension.PRESSURE_DIFFERENCE);
        List<Curve> curves = new ArrayList<>();
        curves.add(curve("air.core", "#1d5a6b", 2.6, "", axes.line(c.air(), AirPoint::flowM3PerS, AirPoint::corePa)));
        curves.add(curve(
                "air.offered", "#7a4b00", 2.4, LONG, axes.line(c.air(), AirPoint::flowM3PerS, AirPoint::offeredPa)));
        if (c.air().stream().anyMatch(p -> p.fanPa() > 0)) {
            curves.add(
                    curve("air.fan", "#4f5a60", 1.8, SHORT, axes.line(c.air(), AirPoint::flowM3PerS, AirPoint::fanPa)));
        }
        String flow = words.show(c.at().flowM3PerS(), Dimension.AIR_FLOW);
        String pressure = words.show(c.at().corePa(), Dimension.PRESSURE_DIFFERENCE);
        String fan = words.show(c.at().fanPa(), Dimension.PRESSURE_DIFFERENCE);
        String ram = words.show(c.at().offeredPa() - c.at().fanPa(), Dimension.PRESSURE_DIFFERENCE);
        return axes.chart(
                "air-curves",
                curves,
                c.at().flowM3PerS(),
                c.at().corePa(),
                flow + ", " + pressure,
                words.say(c.at().fanPa() < 0 ? "curve.air.alt.windmill" : "curve.air.alt", flow, pressure, fan, ram));
    }

    /** Heat of the radiator against air flow, with the heat to get rid of. */
    CurveChart heat(CoolingCurves c, double askedW, double engineOutK, double limitK) {
        HeatPoint last = c.heat().get(c.heat().size() - 1);
        double highest = Math.max(askedW, Math.max(last.heatW(), last.heatAtLimitW()));
        Axes axes = new Axes(words, last.airMassKgPerS(), Dimension.MASS_FLOW, 1.1 * highest, Dimension.POWER);
        String now = words.show(engineOutK, Dimension.TEMPERATURE);
        String limit = words.show(limitK, Dimension.TEMPERATURE);
        List<Curve> curves = List.of(
                curve(
                        "heat.now",
                        "#1d5a6b",
                        2.6,
                        "",
                        axes.line(c.heat(), HeatPoint::airMassKgPerS, HeatPoint::heatW),
                        now),
                curve(
                        "heat.limit",
                        "#4f5a60",
                        1.8,
                        LONG,
                        axes.line(c.heat(), HeatPoint::airMassKgPerS, HeatPoint::heatAtLimitW),
                        limit),
                curve("heat.asked", "#9b1c1c", 1.8, SHORT, axes.line(c.heat(), HeatPoint::airMassKgPerS, p -> askedW)));
        String flow = words.show(c.heatAt().airMassKgPerS(), Dimension.MASS_FLOW);
        String heat = words.show(c.heatAt().heatW(), Dimension.POWER);
        String atLimit = words.show(c.heatAt().heatAtLimitW(), Dimension.POWER);
        return axes.chart(
                "heat-curves",
                curves,
                c.heatAt().airMassKgPerS(),
                c.heatAt().heatW(),
                flow + ", " + heat,
                words.say("curve.heat.alt", flow, heat, now, words.show(askedW, Dimension.POWER), limit, atLimit));
    }

    private Curve curve(String key, String colour, double width, String dashes, String points, Object... arguments) {
        return new Curve(words.say("curve." + key, arguments), points, colour, width, dashes);
    }

    /** Two scales from 0, and what lies on them. */
    private record Axes(Words words, double most, Dimension across, double highest, Dimension up) {

        double x(double value) {
            return CurveChart.LEFT + (CurveChart.RIGHT - CurveChart.LEFT) * value / most;
        }

        double y(double value) {
            return CurveChart.BOTTOM - (CurveChart.BOTTOM - CurveChart.TOP) * value / highest;
        }

        /** The part of a line that lies inside; it ends where it crosses an edge. */
        <T> String line(List<T> points, ToDoubleFunction<T> along, ToDoubleFunction<T> value) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < points.size(); i++) {
                double here = value.applyAsDouble(points.get(i));
                if (inside(here)) {
                    point(line, along.applyAsDouble(points.get(i)), here);
                }
                if (i + 1 < points.size()) {
                    double next = value.applyAsDouble(points.get(i + 1));
                    for (double edge : new double[] {0, highest}) {
                        if ((here - edge) * (next - edge) < 0) {
                            double share = (edge - here) / (next - here);
                            double from = along.applyAsDouble(points.get(i));
                            double to = along.applyAsDouble(points.get(i + 1));
                            point(line, from + share * (to - from), edge);
                        }
                    }
                }
            }
            return line.toString().strip();
        }

        private boolean inside(double value) {
            return value >= 0 && value <= highest;
        }

        private void point(StringBuilder line, double at, double value) {
            line.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(at), y(value)));
        }

        private List<Tick> ticks(double to, Dimension dimension, boolean upward) {
            double unit = words.unitSi(dimension);
            double step = step(to / unit, upward ? 6 : 5);
            List<Tick> ticks = new ArrayList<>();
            for (int i = 0; i * step <= to / unit * (1 + 1e-9); i++) {
                double at = upward ? y(i * step * unit) : x(i * step * unit);
                int digits = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
                String number = String.format(Locale.ROOT, "%." + digits + "f", i * step);
                ticks.add(new Tick(Math.rint(10 * at) / 10, DecimalSign.in(number)));
            }
            return ticks;
        }

        /** A round step that gives at most so many marks. */
        private static double step(double to, int marks) {
            double power = Math.pow(10, Math.floor(Math.log10(to / marks)));
            for (double factor : new double[] {1, 2, 5}) {
                if (to / (factor * power) <= marks) {
                    return factor * power;
                }
            }
            return 10 * power;
        }

        CurveChart chart(String id, List<Curve> curves, double at, double value, String note, String alternative) {
            double width = TextWidth.of(note, 13, true);
            double noteX = Math.min(x(at) + 18, CurveChart.RIGHT - width - 4);
            double noteY = y(value) + (id.equals("air-curves") ? 5 : 24);
            return new CurveChart(
                    id,
                    words.say("curve." + id),
                    words.say("curve.across", words.symbol(across)),
                    words.say("curve.up." + id, words.symbol(up)),
                    ticks(most, across, false),
                    ticks(highest, up, true),
                    curves,
                    x(at),
                    y(value),
                    new DrawingLabel("note", noteX, noteY, note, 13, true),
                    alternative);
        }
    }
}

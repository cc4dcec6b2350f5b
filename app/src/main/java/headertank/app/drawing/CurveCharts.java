package headertank.app.drawing;

import headertank.app.chart.CurveChart;
import headertank.app.chart.CurveChart.Line;
import headertank.app.chart.PanelDrawing;
import headertank.app.chart.Scale;
import headertank.app.chart.Ticks;
import headertank.app.drawing.StateCurves.Named;
import headertank.app.drawing.ink.DrawingLabel;
import headertank.app.drawing.ink.TextWidth;
import headertank.app.unit.Dimension;
import headertank.calc.result.CoolingCurves;
import headertank.calc.result.CoolingCurves.AirPoint;
import headertank.calc.result.CoolingCurves.HeatPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Draws the curves behind a steady state. */
final class CurveCharts {

    private static final String FULL = "none";
    private static final String LONG = "9 4";
    private static final String SHORT = "3 3";

    private final Words words;

    CurveCharts(Words words) {
        this.words = words;
    }

    /** What the core takes and what drives the air, against air flow. */
    StateCurves air(CoolingCurves c) {
        double most = c.air().get(c.air().size() - 1).flowM3PerS();
        double highest = Math.max(
                1.9 * c.at().corePa(),
                c.air().stream().mapToDouble(AirPoint::fanPa).max().orElse(0));
        Axes axes = new Axes(
                "air-curves", most, Dimension.AIR_FLOW, Math.max(20, 1.1 * highest), Dimension.PRESSURE_DIFFERENCE);
        axes.line(curve("air.core", "#1d5a6b", 2.6, FULL), c.air(), AirPoint::flowM3PerS, AirPoint::corePa);
        axes.line(curve("air.offered", "#7a4b00", 2.4, LONG), c.air(), AirPoint::flowM3PerS, AirPoint::offeredPa);
        if (c.air().stream().anyMatch(p -> p.fanPa() > 0)) {
            axes.line(curve("air.fan", "#4f5a60", 1.8, SHORT), c.air(), AirPoint::flowM3PerS, AirPoint::fanPa);
        }
        String flow = words.show(c.at().flowM3PerS(), Dimension.AIR_FLOW);
        String pressure = words.show(c.at().corePa(), Dimension.PRESSURE_DIFFERENCE);
        String fan = words.show(c.at().fanPa(), Dimension.PRESSURE_DIFFERENCE);
        String ram = words.show(c.at().offeredPa() - c.at().fanPa(), Dimension.PRESSURE_DIFFERENCE);
        return axes.chart(
                "air-curves",
                c.at().flowM3PerS(),
                c.at().corePa(),
                5,
                flow + ", " + pressure,
                words.say(c.at().fanPa() < 0 ? "curve.air.alt.windmill" : "curve.air.alt", flow, pressure, fan, ram));
    }

    /** Heat of the radiator against air flow, with the heat to get rid of. */
    StateCurves heat(CoolingCurves c, double askedW, double engineOutK, double limitK) {
        HeatPoint last = c.heat().get(c.heat().size() - 1);
        double highest = Math.max(askedW, Math.max(last.heatW(), last.heatAtLimitW()));
        Axes axes = new Axes("heat-curves", last.airMassKgPerS(), Dimension.MASS_FLOW, 1.1 * highest, Dimension.POWER);
        String now = words.show(engineOutK, Dimension.TEMPERATURE);
        String limit = words.show(limitK, Dimension.TEMPERATURE);
        axes.line(curve("heat.now", "#1d5a6b", 2.6, FULL, now), c.heat(), HeatPoint::airMassKgPerS, HeatPoint::heatW);
        axes.line(
                curve("heat.limit", "#4f5a60", 1.8, LONG, limit),
                c.heat(),
                HeatPoint::airMassKgPerS,
                HeatPoint::heatAtLimitW);
        axes.line(curve("heat.asked", "#9b1c1c", 1.8, SHORT), c.heat(), HeatPoint::airMassKgPerS, p -> askedW);
        String flow = words.show(c.heatAt().airMassKgPerS(), Dimension.MASS_FLOW);
        String heat = words.show(c.heatAt().heatW(), Dimension.POWER);
        String atLimit = words.show(c.heatAt().heatAtLimitW(), Dimension.POWER);
        return axes.chart(
                "heat-curves",
                c.heatAt().airMassKgPerS(),
                c.heatAt().heatW(),
                24,
                flow + ", " + heat,
                words.say("curve.heat.alt", flow, heat, now, words.show(askedW, Dimension.POWER), limit, atLimit));
    }

    private Drawn curve(String key, String colour, double width, String dash, Object... arguments) {
        return new Drawn(key, new Named(words.say("curve." + key, arguments), new Line(colour, width, dash)));
    }

    /** A curve before it is drawn. */
    private record Drawn(String key, Named named) {}

    /** Two scales from 0, and what lies on them. */
    private final class Axes {

        private final Scale x;
        private final Scale y;
        private final Dimension across;
        private final Dimension up;
        private final PanelDrawing panel;
        private final List<Named> legend = new ArrayList<>();

        Axes(String id, double most, Dimension across, double highest, Dimension up) {
            this.x = new Scale(0, most, StateCurves.LEFT, StateCurves.RIGHT);
            this.y = new Scale(0, highest, StateCurves.BOTTOM, StateCurves.TOP);
            this.across = across;
            this.up = up;
            this.panel = new PanelDrawing(words.say("curve.up." + id, words.symbol(up)), x, y)
                    .ticks(Ticks.of(y, up, words.system(), 0, 6));
        }

        <T> Axes line(Drawn curve, List<T> points, ToDoubleFunction<T> along, ToDoubleFunction<T> value) {
            panel.within(
                    curve.key(),
                    curve.named().line(),
                    points.stream().map(along::applyAsDouble).toList(),
                    points.stream().map(value::applyAsDouble).toList());
            legend.add(curve.named());
            return this;
        }

        StateCurves chart(String id, double at, double value, double noteDown, String note, String alternative) {
            double width = TextWidth.of(note, 13, true);
            double noteX = Math.min(x.at(at) + 18, StateCurves.RIGHT - width - 4);
            double noteY = y.at(value) + noteDown;
            CurveChart chart = new CurveChart(
                    StateCurves.WIDTH,
                    StateCurves.height(legend.size()),
                    StateCurves.LEFT,
                    StateCurves.RIGHT,
                    StateCurves.TOP,
                    StateCurves.BOTTOM,
                    List.of(panel.draw()),
                    Ticks.of(x, across, words.system(), 0, 5),
                    List.of());
            return new StateCurves(
                    id,
                    words.say("curve." + id),
                    chart,
                    words.say("curve.across", words.symbol(across)),
                    x.at(at),
                    y.at(value),
                    new DrawingLabel("note", noteX, noteY, note, 13, true),
                    legend,
                    alternative);
        }
    }
}

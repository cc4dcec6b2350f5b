package headertank.app.check.chart;

import headertank.app.chart.CurveChart;
import headertank.app.chart.CurveChart.Line;
import headertank.app.chart.CurveChart.Panel;
import headertank.app.chart.CurveChart.Phase;
import headertank.app.chart.PanelDrawing;
import headertank.app.chart.Scale;
import headertank.app.chart.Ticks;
import headertank.app.check.figure.FigureText;
import headertank.app.check.stored.StoredRun;
import headertank.app.check.stored.StoredRun.Curves;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.calc.result.RunResult;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Draws a run: temperatures with their limits, fans, their current, voltage and road speed over one axis of time. */
public final class RunChart {

    static final int WIDTH = 740;
    static final double LEFT = 46;
    static final double RIGHT = 550;
    static final double TOP = 24;
    /** How many steps an axis of time has at most. */
    static final int MOST_TIMES = 10;

    static final double LABEL_CHARACTER = 7.2;

    static final Line COOLANT = new Line("#1d5a6b", 2.8, "none");
    private static final Line HEAD = new Line("#1c2226", 1.6, "1.5 2.5");
    private static final Line GAUGE = new Line("#7a4b00", 2, "8 4");
    private static final Line OIL = new Line("#5a4a7a", 2, "12 3 2 3");
    private static final Line PLAIN = new Line("#1d5a6b", 1.8, "none");

    private static final double TEMPERATURES = 230;
    private static final double SMALL = 52;
    private static final double GAP = 28;
    private static final double AXIS = 34;

    private final StoredRun run;
    private final Curves curves;
    private final FigureText shown;
    private final Scale x;

    private RunChart(StoredRun run, FigureText shown) {
        this.run = run;
        this.curves = run.curves();
        this.shown = shown;
        this.x = new Scale(0, Math.max(1, run.lengthS()), LEFT, RIGHT);
    }

    /** @return the drawing; the same height for every run */
    public static CurveChart of(StoredRun run, double coolantLimitK, double oilLimitK, FigureText shown) {
        RunChart chart = new RunChart(run, shown);
        List<Panel> panels = new ArrayList<>();
        double top = TOP + 20;
        panels.add(chart.temperatures(top, coolantLimitK, oilLimitK));
        top += TEMPERATURES + GAP;
        panels.add(chart.duty(top));
        panels.add(chart.current(top + SMALL + GAP));
        panels.add(chart.voltage(top + 2 * (SMALL + GAP)));
        panels.add(chart.speed(top + 3 * (SMALL + GAP)));
        double bottom = top + 4 * SMALL + 3 * GAP;
        return new CurveChart(
                WIDTH,
                (int) Math.ceil(bottom + AXIS),
                LEFT,
                RIGHT,
                TOP,
                bottom,
                panels,
                Ticks.minutes(chart.x, MOST_TIMES),
                phases(run.phases(), chart.x, shown));
    }

    private Panel temperatures(double top, double coolantLimitK, double oilLimitK) {
        Scale y = temperatureScale(
                top,
                top + TEMPERATURES,
                Stream.of(curves.coolantK(), curves.headK(), curves.gaugeK(), curves.oilK())
                        .toList(),
                coolantLimitK,
                oilLimitK);
        return new PanelDrawing(shown.words("check.curve.temperatures", shown.degree()), x, y)
                .ticks(shown.temperatureTicks(y))
                .band(
                        RunResult.Window.FROM_K,
                        RunResult.Window.TO_K,
                        shown.words(
                                "check.curve.window",
                                plain(shown.temperatureNumber(RunResult.Window.FROM_K)),
                                whole(RunResult.Window.TO_K, shown)))
                .limit("coolant-limit", coolantLimitK, named("check.curve.limit", coolantLimitK))
                .limit("oil-limit", oilLimitK, named("check.curve.oil-limit", oilLimitK))
                .curve("oil", shown.words("check.curve.oil"), OIL, curves.timeS(), curves.oilK())
                .curve("head", shown.words("check.curve.head"), HEAD, curves.timeS(), curves.headK())
                .curve("coolant", shown.words("check.curve.coolant"), COOLANT, curves.timeS(), curves.coolantK())
                .curve("gauge", shown.words("check.curve.gauge"), GAUGE, curves.timeS(), curves.gaugeK())
                .draw();
    }

    private String named(String key, double kelvin) {
        return shown.words(key, whole(kelvin, shown));
    }

    private Panel duty(double top) {
        Scale y = new Scale(0, 1, top + SMALL, top);
        return new PanelDrawing(shown.words("check.curve.duty"), x, y)
                .ticks(Ticks.of(y, Dimension.FRACTION, UnitSystem.METRIC, 100, 1))
                .area(curves.timeS(), curves.fanDuty())
                .curve("duty", "", PLAIN, curves.timeS(), curves.fanDuty())
                .draw();
    }

    private Panel current(double top) {
        double peak = run.current().map(StoredRun.Current::peakFanA).orElse(0.0);
        double highest = Math.max(10, Math.max(peak, highest(curves.fanCurrentA())));
        Scale y = new Scale(0, highest * 1.05, top + SMALL, top);
        PanelDrawing panel = new PanelDrawing(shown.words("check.curve.current"), x, y)
                .ticks(Ticks.plain(y, 10, 3))
                .curve("current", "", PLAIN, curves.timeS(), curves.fanCurrentA());
        return (peak > 0
                        ? panel.mark("peak-current", peak, shown.words("check.curve.peak", shown.current(peak)))
                        : panel)
                .draw();
    }

    private Panel voltage(double top) {
        double lowest = run.current().map(StoredRun.Current::lowestVoltageV).orElse(RunResult.Current.BATTERY_V);
        double from = Math.min(11.5, Math.min(lowest, lowest(curves.voltageV(), lowest)) - 0.2);
        double to = Math.max(14, highest(curves.voltageV()) + 0.2);
        Scale y = new Scale(from, to, top + SMALL, top);
        return new PanelDrawing(shown.words("check.curve.voltage"), x, y)
                .ticks(Ticks.plain(y, 1, 3))
                .mark(
                        "battery-voltage",
                        RunResult.Current.BATTERY_V,
                        shown.words("check.curve.battery", shown.voltage(RunResult.Current.BATTERY_V)))
                .curve("voltage", "", PLAIN, curves.timeS(), curves.voltageV())
                .draw();
    }

    private Panel speed(double top) {
        double highest = Math.max(5, highest(curves.roadSpeedMPerS()));
        Scale y = new Scale(0, highest * 1.05, top + SMALL, top);
        return new PanelDrawing(shown.words("check.curve.speed", shown.speedUnit()), x, y)
                .ticks(shown.speedTicks(y))
                .curve("speed", "", PLAIN, curves.timeS(), curves.roadSpeedMPerS())
                .draw();
    }

    /** A scale that holds all curves, the window and the limits [K]. */
    static Scale temperatureScale(double top, double bottom, List<List<Double>> values, double... limitsK) {
        double coldest = RunResult.Window.FROM_K;
        double hottest = RunResult.Window.TO_K;
        for (double limit : limitsK) {
            hottest = Math.max(hottest, limit);
        }
        for (List<Double> v : values) {
            coldest = Math.min(coldest, lowest(v, coldest));
            hottest = Math.max(hottest, highest(v));
        }
        return new Scale(coldest - 3, hottest + 3, bottom, top);
    }

    /** Phases, numbered as in the table; each point but the first is shaded where its neighbour is not. */
    static List<Phase> phases(List<StoredRun.Phase> all, Scale x, FigureText shown) {
        Map<String, Boolean> shades = new HashMap<>();
        List<Phase> phases = new ArrayList<>();
        boolean before = true;
        for (int i = 0; i < all.size(); i++) {
            StoredRun.PhaseSummary p = all.get(i).summary();
            double from = x.at(p.startS());
            double width = Math.rint(10 * (x.at(p.startS() + p.seconds()) - from)) / 10;
            boolean beforeThis = before;
            boolean shaded = shades.computeIfAbsent(p.pointId(), id -> !beforeThis);
            phases.add(new Phase(from, width, fitting(i + 1, shown.shortPoint(p.pointId()), width), shaded));
            before = shaded;
        }
        return phases;
    }

    private static String fitting(int number, String name, double width) {
        for (String text : List.of(number + " " + name, String.valueOf(number))) {
            if (text.length() * LABEL_CHARACTER + 4 <= width) {
                return text;
            }
        }
        return "";
    }

    /** A temperature with its unit, short. */
    static String whole(double kelvin, FigureText shown) {
        return plain(shown.temperatureNumber(kelvin)) + "\u00a0" + shown.degree();
    }

    /** A temperature to the degree, with its unit. */
    static String rounded(double kelvin, FigureText shown) {
        return shown.wholeDegrees(kelvin) + "\u00a0" + shown.degree();
    }

    /** A number of an axis, without a nought after the point. */
    static String plain(String number) {
        return number.endsWith(".0") || number.endsWith(",0") ? number.substring(0, number.length() - 2) : number;
    }

    private static double highest(List<Double> values) {
        return values.isEmpty() ? 0 : Collections.max(values);
    }

    private static double lowest(List<Double> values, double otherwise) {
        return values.isEmpty() ? otherwise : Collections.min(values);
    }
}

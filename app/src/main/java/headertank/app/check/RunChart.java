package headertank.app.check;

import headertank.app.check.DutyResult.Moment;
import headertank.app.check.DutyResult.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** A run over time, for drawing: geometry in pixels of the drawing; the words stay in the template. */
public record RunChart(
        int width,
        int height,
        double left,
        double right,
        double top,
        double bottom,
        String coolant,
        String gauge,
        String oil,
        double limitY,
        String limitText,
        double fanTop,
        double fanBottom,
        String fan,
        List<Tick> temperatures,
        List<Tick> times,
        List<Phase> phases,
        String shadedPoint) {

    private static final int WIDTH = 520;
    private static final int HEIGHT = 330;
    private static final double LEFT = 52;
    private static final double RIGHT = 508;
    private static final double TOP = 22;
    private static final double BOTTOM = 240;
    private static final double FAN_TOP = 258;
    private static final double FAN_BOTTOM = 286;

    public RunChart {
        temperatures = List.copyOf(temperatures);
        times = List.copyOf(times);
        phases = List.copyOf(phases);
    }

    /** A mark on a scale. */
    public record Tick(double at, String text) {}

    /** A stretch of time at one operating point; {@code odd} ones are shaded. */
    public record Phase(double x, double width, String point, boolean shaded) {}

    static RunChart of(DutyResult duty, Run run, double limitK, Shown shown) {
        double coldest = limitK;
        double hottest = limitK;
        for (Moment m : run.trace()) {
            coldest = Math.min(coldest, Math.min(m.coolantK(), Math.min(m.gaugeK(), m.oilK())));
            hottest = Math.max(hottest, Math.max(m.coolantK(), Math.max(m.gaugeK(), m.oilK())));
        }
        double length = run.trace().isEmpty()
                ? 1
                : run.trace().get(run.trace().size() - 1).timeS();
        Scale y = new Scale(coldest - 3, hottest + 3, BOTTOM, TOP);
        Scale x = new Scale(0, Math.max(1, length), LEFT, RIGHT);
        Scale fan = new Scale(0, 1, FAN_BOTTOM, FAN_TOP);
        List<Tick> temperatures = shown.temperatureSteps(coldest - 3, hottest + 3).stream()
                .map(k -> new Tick(y.at(k), shown.temperatureNumber(k)))
                .toList();
        List<Tick> times = Scale.steps(0, length, 60).stream()
                .map(s -> new Tick(x.at(s), String.valueOf(Math.round(s / 60))))
                .toList();
        return new RunChart(
                WIDTH,
                HEIGHT,
                LEFT,
                RIGHT,
                TOP,
                BOTTOM,
                line(run, x, y, Moment::coolantK),
                line(run, x, y, Moment::gaugeK),
                line(run, x, y, Moment::oilK),
                y.at(limitK),
                shown.temperature(limitK),
                FAN_TOP,
                FAN_BOTTOM,
                area(run, x, fan),
                temperatures,
                times,
                phases(duty, run, x),
                duty.points().get(0).id());
    }

    private static String line(Run run, Scale x, Scale y, ToDoubleFunction<Moment> value) {
        StringBuilder points = new StringBuilder();
        for (Moment m : run.trace()) {
            point(points, x.at(m.timeS()), y.at(value.applyAsDouble(m)));
        }
        return points.toString().strip();
    }

    private static String area(Run run, Scale x, Scale fan) {
        StringBuilder points = new StringBuilder();
        point(points, LEFT, FAN_BOTTOM);
        double last = FAN_BOTTOM;
        for (Moment m : run.trace()) {
            double at = x.at(m.timeS());
            point(points, at, last);
            last = fan.at(m.fanDuty());
            point(points, at, last);
        }
        point(points, RIGHT, last);
        point(points, RIGHT, FAN_BOTTOM);
        return points.toString().strip();
    }

    private static void point(StringBuilder points, double x, double y) {
        points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x, y));
    }

    private static List<Phase> phases(DutyResult duty, Run run, Scale x) {
        String first = duty.points().get(0).id();
        List<Phase> phases = new ArrayList<>();
        List<Moment> trace = run.trace();
        int start = 0;
        for (int i = 1; i <= trace.size(); i++) {
            if (i == trace.size()
                    || !trace.get(i).point().equals(trace.get(start).point())) {
                double from = x.at(trace.get(start).timeS());
                double to = x.at(trace.get(Math.min(i, trace.size() - 1)).timeS());
                String point = trace.get(start).point();
                phases.add(new Phase(from, Math.rint(10 * (to - from)) / 10, point, point.equals(first)));
                start = i;
            }
        }
        return phases;
    }
}

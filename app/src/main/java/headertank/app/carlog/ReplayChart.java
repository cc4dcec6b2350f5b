package headertank.app.carlog;

import headertank.app.chart.CurveChart;
import headertank.app.chart.CurveChart.Line;
import headertank.app.chart.PanelDrawing;
import headertank.app.chart.Scale;
import headertank.app.chart.Ticks;
import headertank.app.check.figure.FigureText;
import headertank.calc.evidence.Replay;
import headertank.calc.evidence.Replay.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/** Draws a log beside what the car would have shown: measured, before learning, after it. */
final class ReplayChart {

    private static final int WIDTH = 740;
    private static final double LEFT = 46;
    private static final double RIGHT = 550;
    private static final double TOP = 44;
    private static final double BOTTOM = 274;
    private static final double AXIS = 34;
    private static final int MOST_TIMES = 10;

    /** Longest time between two readings that a line joins [s]. */
    private static final double JOINED_S = 30;

    /** Room above the hottest and below the coldest [K]. */
    private static final double ROOM_K = 3;

    private static final Line READ = new Line("#1c2226", 2.4, "none");
    private static final Line BEFORE = new Line("#7a4b00", 2, "8 4");
    private static final Line AFTER = new Line("#1d5a6b", 2, "2 3");

    private ReplayChart() {}

    static CurveChart of(Taught taught, FigureText shown) {
        List<Moment> before = taught.before().moments();
        List<Moment> after = taught.after().map(Replay::moments).orElse(List.of());
        double start = before.get(0).timeS();
        double length = before.get(before.size() - 1).timeS() - start;
        Scale x = new Scale(0, Math.max(1, length), LEFT, RIGHT);
        double[] all = DoubleStream.concat(
                        before.stream().flatMapToDouble(m -> DoubleStream.of(m.readK(), m.expectedK())),
                        after.stream().mapToDouble(Moment::expectedK))
                .filter(Double::isFinite)
                .toArray();
        Scale y = new Scale(
                DoubleStream.of(all).min().orElseThrow() - ROOM_K,
                DoubleStream.of(all).max().orElseThrow() + ROOM_K,
                BOTTOM,
                TOP);
        PanelDrawing panel = new PanelDrawing(shown.words("carlog.chart.panel", shown.degree()), x, y)
                .ticks(shown.temperatureTicks(y));
        curve(panel, "before", shown.words("carlog.chart.before"), BEFORE, before, start, Moment::expectedK);
        curve(panel, "after", shown.words("carlog.chart.after"), AFTER, after, start, Moment::expectedK);
        curve(panel, "read", shown.words("carlog.chart.read"), READ, before, start, Moment::readK);
        return new CurveChart(
                WIDTH,
                (int) Math.ceil(BOTTOM + AXIS),
                LEFT,
                RIGHT,
                TOP - 20,
                BOTTOM,
                List.of(panel.draw()),
                Ticks.minutes(x, MOST_TIMES),
                List.of());
    }

    /** One line for each stretch without a gap; the last one has the name. */
    private static void curve(
            PanelDrawing panel,
            String key,
            String name,
            Line line,
            List<Moment> moments,
            double start,
            ToDoubleFunction<Moment> value) {
        List<Double> times = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (Moment m : moments) {
            double v = value.applyAsDouble(m);
            if (Double.isFinite(v)) {
                double t = m.timeS() - start;
                if (!times.isEmpty() && t - times.get(times.size() - 1) > JOINED_S) {
                    panel.curve(key, "", line, times, values);
                    times = new ArrayList<>();
                    values = new ArrayList<>();
                }
                times.add(t);
                values.add(v);
            }
        }
        if (!times.isEmpty()) {
            panel.curve(key, name, line, times, values);
        }
    }
}

package headertank.app.chart;

import headertank.app.chart.CurveChart.Band;
import headertank.app.chart.CurveChart.Curve;
import headertank.app.chart.CurveChart.Label;
import headertank.app.chart.CurveChart.Limit;
import headertank.app.chart.CurveChart.Line;
import headertank.app.chart.CurveChart.Panel;
import headertank.app.chart.CurveChart.Tick;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Draws one panel: collects curves and limits, then sets their names apart. */
public final class PanelDrawing {

    /** Room for a name [px]. */
    public static final double LABEL_HEIGHT = 16;

    static final Line LIMIT = new Line("#9b1c1c", 2, "10 4");
    static final Line BAND = new Line("#1f6b3a", 7, "none");
    private static final Line MARK = new Line("#4f5a60", 1.2, "3 3");

    private final Scale x;
    private final Scale y;
    private final String title;
    private final List<Band> bands = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final List<Curve> curves = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private List<Tick> ticks = List.of();
    private String area = "";

    public PanelDrawing(String title, Scale x, Scale y) {
        this.title = title;
        this.x = x;
        this.y = y;
    }

    /** Marks of its scale. */
    public PanelDrawing ticks(List<Tick> marks) {
        ticks = marks;
        return this;
    }

    /** A stretch that means something. */
    public PanelDrawing band(double from, double to, String name) {
        double high = y.at(to);
        bands.add(new Band(high, Math.rint(10 * (y.at(from) - high)) / 10));
        return name(name, y.at(0.5 * (from + to)), BAND);
    }

    /** A value that is not to be passed. */
    public PanelDrawing limit(String key, double value, String name) {
        limits.add(new Limit(key, y.at(value), true));
        return name(name, y.at(value), LIMIT);
    }

    /** A value to compare with. */
    public PanelDrawing mark(String key, double value, String name) {
        limits.add(new Limit(key, y.at(value), false));
        return name(name, y.at(value), MARK);
    }

    /** A curve named where it ends; without a name when that is empty. */
    public PanelDrawing curve(String key, String name, Line line, List<Double> times, List<Double> values) {
        curves.add(new Curve(key, points(times, values), line));
        return values.isEmpty() ? this : name(name, y.at(values.get(values.size() - 1)), line);
    }

    /** What lies below a curve, filled. */
    public PanelDrawing area(List<Double> times, List<Double> values) {
        if (!times.isEmpty()) {
            area = point(times.get(0), 0) + points(times, values) + " " + point(times.get(times.size() - 1), 0);
            area = area.strip();
        }
        return this;
    }

    /** The part of a curve that lies inside; it ends where it crosses an edge, and its name is written elsewhere. */
    public PanelDrawing within(String key, Line line, List<Double> along, List<Double> values) {
        List<Double> xs = new ArrayList<>();
        List<Double> ys = new ArrayList<>();
        for (int i = 0; i < along.size(); i++) {
            double here = values.get(i);
            if (y.holds(here)) {
                xs.add(along.get(i));
                ys.add(here);
            }
            for (double edge : i + 1 < along.size() ? new double[] {y.from(), y.to()} : new double[0]) {
                double next = values.get(i + 1);
                if ((here - edge) * (next - edge) < 0) {
                    double share = (edge - here) / (next - here);
                    xs.add(along.get(i) + share * (along.get(i + 1) - along.get(i)));
                    ys.add(edge);
                }
            }
        }
        return curve(key, "", line, xs, ys);
    }

    private PanelDrawing name(String text, double at, Line line) {
        if (!text.isEmpty()) {
            labels.add(new Label(text, at, at, line));
        }
        return this;
    }

    private String points(List<Double> times, List<Double> values) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < times.size(); i++) {
            all.append(point(times.get(i), values.get(i)));
        }
        return all.toString().strip();
    }

    private String point(double time, double value) {
        return String.format(Locale.ROOT, "%.1f,%.1f ", x.at(time), y.at(value));
    }

    public Panel draw() {
        return new Panel(
                title,
                Math.min(y.start(), y.end()),
                Math.max(y.start(), y.end()),
                ticks,
                area,
                bands,
                limits,
                curves,
                apart(labels, Math.min(y.start(), y.end()), Math.max(y.start(), y.end())));
    }

    /** Names in the order of what they name, none on top of another, the whole column inside the panel if it fits. */
    static List<Label> apart(List<Label> labels, double top, double bottom) {
        List<Label> sorted =
                labels.stream().sorted(Comparator.comparingDouble(Label::fromY)).toList();
        double[] at = new double[sorted.size()];
        double least = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < at.length; i++) {
            at[i] = Math.max(sorted.get(i).fromY(), least);
            least = at[i] + LABEL_HEIGHT;
        }
        double most = Math.max(bottom, top + LABEL_HEIGHT * (at.length - 1));
        for (int i = at.length - 1; i >= 0; i--) {
            at[i] = Math.min(at[i], most);
            most = at[i] - LABEL_HEIGHT;
        }
        List<Label> placed = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            Label l = sorted.get(i);
            placed.add(new Label(l.text(), Math.rint(10 * at[i]) / 10, l.fromY(), l.line()));
        }
        return placed;
    }
}

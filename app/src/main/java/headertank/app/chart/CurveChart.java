package headertank.app.chart;

import java.util.List;

/**
 * Panels below each other over one axis, for drawing on page and paper: geometry in pixels of the drawing, and words
 * where a curve or a limit is named directly beside it.
 *
 * @param top where phases begin to be shaded
 * @param bottom where the axis lies
 * @param panels from top to bottom
 * @param across marks on the axis
 * @param phases stretches of a schedule; empty when there is only one
 */
public record CurveChart(
        int width,
        int height,
        double left,
        double right,
        double top,
        double bottom,
        List<Panel> panels,
        List<Tick> across,
        List<Phase> phases) {

    public CurveChart {
        panels = List.copyOf(panels);
        across = List.copyOf(across);
        phases = List.copyOf(phases);
    }

    /** A mark on a scale. */
    public record Tick(double at, String text) {}

    /**
     * A stretch of time at one operating point.
     *
     * @param text its number and name, as much as there is room for
     * @param shaded whether it stands out from its neighbours
     */
    public record Phase(double x, double width, String text, boolean shaded) {}

    /**
     * One scale with its curves.
     *
     * @param area filled curve; empty for none
     * @param bands stretches of the scale that mean something, e.g. the window that coolant is happy in
     * @param limits values that mean something
     * @param labels names of curves, limits and bands, at the right, apart from each other
     */
    public record Panel(
            String title,
            double top,
            double bottom,
            List<Tick> ticks,
            String area,
            List<Band> bands,
            List<Limit> limits,
            List<Curve> curves,
            List<Label> labels) {
        public Panel {
            ticks = List.copyOf(ticks);
            bands = List.copyOf(bands);
            limits = List.copyOf(limits);
            curves = List.copyOf(curves);
            labels = List.copyOf(labels);
        }

        /** What a curve is called where its values are read: its label, or the title of a panel of one curve. */
        public String nameOf(Curve curve) {
            return labels.stream()
                    .filter(label -> label.line().equals(curve.line()))
                    .map(Label::text)
                    .findFirst()
                    .orElse(title);
        }
    }

    /** A stretch of a scale. */
    public record Band(double y, double height) {}

    /** A value of a scale; {@code hard} ones are not to be passed. */
    public record Limit(String key, double y, boolean hard) {}

    /**
     * A curve, told from others by its dashes also without colour.
     *
     * @param points for a polyline
     * @param dash lengths of dash and gap; {@code none} for an unbroken line
     */
    public record Curve(String key, String points, Line line) {}

    /** How a curve is drawn. */
    public record Line(String colour, double width, String dash) {}

    /**
     * A name at the right.
     *
     * @param y where the text stands
     * @param fromY where that which it names ends
     * @param line how that is drawn
     */
    public record Label(String text, double y, double fromY, Line line) {}
}

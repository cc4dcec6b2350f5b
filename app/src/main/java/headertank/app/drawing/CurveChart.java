package headertank.app.drawing;

import java.util.List;

/**
 * Curves over one axis with the operating point where they meet. Geometry in pixels of the drawing.
 *
 * @param x the operating point
 * @param y the operating point
 * @param note words beside the operating point
 * @param alternative the drawing in sentences
 */
public record CurveChart(
        String id,
        String title,
        String acrossText,
        String upText,
        List<Tick> across,
        List<Tick> up,
        List<Curve> curves,
        double x,
        double y,
        DrawingLabel note,
        String alternative) {

    static final int WIDTH = 480;
    static final double LEFT = 62;
    static final double RIGHT = 466;
    static final double TOP = 30;
    static final double BOTTOM = 250;
    private static final int ROW = 19;

    public CurveChart {
        across = List.copyOf(across);
        up = List.copyOf(up);
        curves = List.copyOf(curves);
    }

    /** A mark on a scale. */
    public record Tick(double at, String text) {}

    /**
     * One curve.
     *
     * @param points for a polyline
     * @param dashes its pattern, empty for a full line
     */
    public record Curve(String name, String points, String colour, double width, String dashes) {}

    public int width() {
        return WIDTH;
    }

    /** With a row of the legend for each curve and one for the operating point. */
    public int height() {
        return (int) BOTTOM + 46 + ROW * (curves.size() + 1);
    }

    public double left() {
        return LEFT;
    }

    public double right() {
        return RIGHT;
    }

    public double top() {
        return TOP;
    }

    public double bottom() {
        return BOTTOM;
    }

    /** Base line of a row of the legend. */
    public double legendY(int row) {
        return BOTTOM + 56 + ROW * row;
    }

    public long paperWidth() {
        return Math.round(DrawingPanel.ON_PAPER * width());
    }

    public long paperHeight() {
        return Math.round(DrawingPanel.ON_PAPER * height());
    }
}

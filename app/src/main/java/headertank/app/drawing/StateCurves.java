package headertank.app.drawing;

import headertank.app.chart.CurveChart;
import headertank.app.chart.CurveChart.Line;
import headertank.app.drawing.ink.DrawingLabel;
import headertank.app.drawing.ink.DrawingPanel;
import java.util.List;

/**
 * Curves behind a steady state with the operating point where they meet, and a legend below. Geometry in pixels of the drawing.
 *
 * @param x the operating point
 * @param y the operating point
 * @param note words beside the operating point
 * @param legend what each curve is
 * @param alternative the drawing in sentences
 */
public record StateCurves(
        String id,
        String title,
        CurveChart chart,
        String acrossText,
        double x,
        double y,
        DrawingLabel note,
        List<Named> legend,
        String alternative) {

    static final int WIDTH = 480;
    static final double LEFT = 62;
    static final double RIGHT = 466;
    static final double TOP = 30;
    static final double BOTTOM = 250;
    private static final int ROW = 19;

    public StateCurves {
        legend = List.copyOf(legend);
    }

    /** A row of the legend. */
    public record Named(String text, Line line) {}

    /** With a row of the legend for each of so many curves and one for the operating point. */
    static int height(int curves) {
        return (int) BOTTOM + 46 + ROW * (curves + 1);
    }

    /** Base line of a row of the legend. */
    public double legendY(int row) {
        return BOTTOM + 56 + ROW * row;
    }

    public long paperWidth() {
        return Math.round(DrawingPanel.ON_PAPER * chart.width());
    }

    public long paperHeight() {
        return Math.round(DrawingPanel.ON_PAPER * chart.height());
    }
}

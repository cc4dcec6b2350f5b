package headertank.app.check.chart;

import headertank.app.chart.CurveChart.Tick;
import headertank.app.chart.Scale;
import headertank.app.check.figure.FigureText;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.PointResult;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the margins of one duty lie, for drawing: the margin that decides with its range, and each operating point's steady
 * margin. Geometry in pixels of the drawing; the words stay in the template.
 */
public record MarginChart(int width, int height, double zeroX, List<Tick> ticks, List<Row> rows) {

    private static final int WIDTH = 380;
    private static final double LEFT = 22;
    private static final double RIGHT = 356;
    private static final int ROW = 40;

    public MarginChart {
        ticks = List.copyOf(ticks);
        rows = List.copyOf(rows);
    }

    /**
     * @param label operating point; empty for the margin that decides
     * @param x expected margin
     * @param barX start of the range's bar
     * @param barWidth width of the bar, 0 for none
     * @param text the margin in words
     * @param endless whether it is what an endless stay would reach
     */
    public record Row(String label, double y, double x, double barX, double barWidth, String text, boolean endless) {}

    public static MarginChart of(DutyResult duty, FigureText shown) {
        double low = -10;
        double high = 30;
        List<Double> all = new ArrayList<>();
        all.add(duty.coolantMarginK());
        duty.marginSpread().ifPresent(r -> all.addAll(List.of(r.low(), r.high())));
        duty.points().forEach(p -> p.steady().ifPresent(s -> all.add(s.coolantMarginK())));
        for (double m : all) {
            if (Double.isFinite(m)) {
                low = Math.min(low, m - 2);
                high = Math.max(high, m + 2);
            }
        }
        double from = Math.max(low, -150);
        double to = Math.min(high, 150);
        Scale scale = new Scale(from, to, LEFT, RIGHT);
        List<Row> rows = new ArrayList<>();
        double barX = 0;
        double barWidth = 0;
        if (duty.marginSpread().isPresent()) {
            barX = scale.at(duty.marginSpread().get().low());
            barWidth = scale.at(duty.marginSpread().get().high()) - barX;
        }
        String words = shown.margin(duty.coolantMarginK());
        rows.add(new Row("", 34, scale.at(duty.coolantMarginK()), barX, barWidth, words, false));
        for (PointResult p : duty.points()) {
            double margin = p.steady().map(PointResult.Steady::coolantMarginK).orElse(Double.NEGATIVE_INFINITY);
            double y = 34 + ROW * rows.size();
            rows.add(new Row(
                    shown.point(duty, p.id()),
                    y,
                    scale.at(margin),
                    0,
                    0,
                    shown.margin(margin),
                    duty.run().isPresent()));
        }
        return new MarginChart(WIDTH, 34 + ROW * rows.size() + 6, scale.at(0), shown.differenceTicks(scale), rows);
    }
}

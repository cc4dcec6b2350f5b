package headertank.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.chart.CurveChart;
import headertank.app.drawing.ink.DrawingLabel;
import headertank.app.drawing.ink.DrawingPanel;
import headertank.app.drawing.ink.Stroke;
import headertank.app.drawing.ink.TextWidth;
import headertank.app.unit.UnitSystem;
import headertank.calc.carspec.Build;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Whatever the car, no text lies on another or leaves the drawing, and nothing is drawn outside. */
class LabelsTest {

    private static final int CARS = 150;
    private static final Set<String> LINES = Set.of(
            "hose-out",
            "hose-hot",
            "hose-cold",
            "hose-pump",
            "header-hose",
            "header-tank",
            "thermostat",
            "bypass",
            "bypass-blocked",
            "belt",
            "block",
            "head",
            "tank",
            "leader",
            "duct",
            "exit",
            "hood",
            "floor",
            "core-face",
            "shroud");

    @Test
    void noTextTouchesAnotherInAnyOfManyRandomCars() {
        long seed = 20261125;
        List<String> duties = List.copyOf(Drawn.RATER.duties().keySet());
        for (int i = 0; i < CARS; i++) {
            Build build = Drawn.random(seed + i);
            UnitSystem system = i % 2 == 0 ? UnitSystem.METRIC : UnitSystem.US;
            CheckDrawing drawing = Drawn.of(build, duties.get(i % duties.size()), system);
            for (DrawingPanel panel : drawing.panels()) {
                clear(panel, "seed " + (seed + i) + ", " + system);
            }
            drawing.curves().forEach(c -> inside(c, "seed of the car"));
        }
    }

    private static void clear(DrawingPanel panel, String seed) {
        List<DrawingLabel> labels = panel.labels();
        assertThat(labels).hasSizeGreaterThan(10);
        for (int i = 0; i < labels.size(); i++) {
            DrawingLabel a = labels.get(i);
            assertThat(a.x()).as(seed + ": " + a).isGreaterThanOrEqualTo(0);
            assertThat(a.x() + a.width()).as(seed + ": " + a).isLessThanOrEqualTo(panel.width());
            assertThat(a.top()).as(seed + ": " + a).isGreaterThanOrEqualTo(0);
            assertThat(a.bottom()).as(seed + ": " + a).isLessThanOrEqualTo(panel.height());
            for (DrawingLabel b : labels.subList(i + 1, labels.size())) {
                assertThat(touch(a, b)).as(seed + ": " + a + " on " + b).isFalse();
            }
        }
        for (Stroke stroke : panel.strokes()) {
            if (LINES.contains(stroke.part())) {
                labels.forEach(l -> assertThat(crosses(stroke, l))
                        .as(seed + ": " + stroke + " through " + l)
                        .isFalse());
            }
        }
        assertThat(panel.strokes()).allSatisfy(s -> assertThat(s.d()).as(seed).doesNotContain("NaN", "Inf"));
    }

    private static boolean crosses(Stroke line, DrawingLabel label) {
        String[] points = line.d().replace("M", "").replace("z", "").split("L");
        for (int i = 1; i < points.length; i++) {
            String[] a = points[i - 1].split(" ");
            String[] b = points[i].split(" ");
            Line2D piece = new Line2D.Double(
                    Double.parseDouble(a[0]),
                    Double.parseDouble(a[1]),
                    Double.parseDouble(b[0]),
                    Double.parseDouble(b[1]));
            if (piece.intersects(label.x(), label.top(), label.width(), label.bottom() - label.top())) {
                return true;
            }
        }
        return false;
    }

    private static void inside(StateCurves state, String seed) {
        CurveChart chart = state.chart();
        assertThat(state.x()).as(seed).isBetween(chart.left(), chart.right());
        assertThat(state.y()).as(seed).isBetween(chart.top(), chart.bottom());
        for (StateCurves.Named named : state.legend()) {
            double right = 62 + TextWidth.of(named.text(), 13, false);
            assertThat(right).as(named.text()).isLessThan(chart.width());
        }
        for (CurveChart.Curve curve : chart.panels().get(0).curves()) {
            for (String point : curve.points().split(" ")) {
                if (!point.isEmpty()) {
                    double y = Double.parseDouble(point.split(",")[1]);
                    assertThat(y).as(seed).isBetween(chart.top() - 0.1, chart.bottom() + 0.1);
                }
            }
        }
    }

    private static boolean touch(DrawingLabel a, DrawingLabel b) {
        return a.x() < b.x() + b.width() && b.x() < a.x() + a.width() && a.top() < b.bottom() && b.top() < a.bottom();
    }
}

package headertank.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.unit.UnitSystem;
import headertank.calc.build.Build;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever the car, no text lies on another or leaves the drawing, and nothing is drawn outside. */
class LabelsTest {

    private static final int CARS = 150;

    @Test
    void noTextTouchesAnotherInAnyOfManyRandomCars() {
        long seed = new Random().nextLong();
        List<String> duties = List.copyOf(Drawn.RATER.duties().keySet());
        for (int i = 0; i < CARS; i++) {
            Build build = Drawn.random(seed + i);
            UnitSystem system = i % 2 == 0 ? UnitSystem.METRIC : UnitSystem.US;
            CheckDrawing drawing = Drawn.of(build, duties.get(i % duties.size()), system);
            for (Panel panel : drawing.panels()) {
                clear(panel, "seed " + (seed + i) + ", " + system);
            }
            drawing.curves().forEach(c -> inside(c, "seed of the car"));
        }
    }

    private static void clear(Panel panel, String seed) {
        List<Label> labels = panel.labels();
        assertThat(labels).hasSizeGreaterThan(10);
        for (int i = 0; i < labels.size(); i++) {
            Label a = labels.get(i);
            assertThat(a.x()).as(seed + ": " + a).isGreaterThanOrEqualTo(0);
            assertThat(a.x() + a.width()).as(seed + ": " + a).isLessThanOrEqualTo(panel.width());
            assertThat(a.top()).as(seed + ": " + a).isGreaterThanOrEqualTo(0);
            assertThat(a.bottom()).as(seed + ": " + a).isLessThanOrEqualTo(panel.height());
            for (Label b : labels.subList(i + 1, labels.size())) {
                assertThat(a.touches(b)).as(seed + ": " + a + " on " + b).isFalse();
            }
        }
        assertThat(panel.strokes()).allSatisfy(s -> assertThat(s.d()).as(seed).doesNotContain("NaN", "Inf"));
    }

    private static void inside(CurveChart chart, String seed) {
        assertThat(chart.x()).as(seed).isBetween(chart.left(), chart.right());
        assertThat(chart.y()).as(seed).isBetween(chart.top(), chart.bottom());
        for (CurveChart.Curve curve : chart.curves()) {
            double right = 62 + TextWidth.of(curve.name(), 13, false);
            assertThat(right).as(curve.name()).isLessThan(chart.width());
            for (String point : curve.points().split(" ")) {
                if (!point.isEmpty()) {
                    double y = Double.parseDouble(point.split(",")[1]);
                    assertThat(y).as(seed).isBetween(chart.top() - 0.1, chart.bottom() + 0.1);
                }
            }
        }
    }
}

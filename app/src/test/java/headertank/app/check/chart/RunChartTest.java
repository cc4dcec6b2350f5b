package headertank.app.check.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.app.chart.CurveChart;
import headertank.app.chart.CurveChart.Label;
import headertank.app.chart.CurveChart.Limit;
import headertank.app.chart.CurveChart.Panel;
import headertank.app.chart.CurveChart.Tick;
import headertank.app.chart.PanelDrawing;
import headertank.app.check.Drifter;
import headertank.app.check.figure.FigureTextTest;
import headertank.app.check.stored.StoredRun;
import headertank.app.unit.UnitSystem;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A drawn run stands where its figures say. */
class RunChartTest {

    private static final double LIMIT_K = 383.15;
    private static final double OIL_LIMIT_K = 403.15;

    private final StoredRun run = Drifter.run();
    private final CurveChart chart = RunChart.of(run, LIMIT_K, OIL_LIMIT_K, FigureTextTest.in(UnitSystem.METRIC));
    private final Panel temperatures = chart.panels().get(0);

    @Test
    void theLimitStandsAtItsTemperature() {
        assertThat(limit("coolant-limit").y()).isCloseTo(celsius(temperatures, 110), within(0.11));
        assertThat(limit("oil-limit").y()).isCloseTo(celsius(temperatures, 130), within(0.11));
        assertThat(limit("coolant-limit").hard()).isTrue();
    }

    @Test
    void theWindowReachesFromEightyFiveToNinetyDegrees() {
        CurveChart.Band window = temperatures.bands().get(0);
        assertThat(window.y()).isCloseTo(celsius(temperatures, 90), within(0.11));
        assertThat(window.y() + window.height()).isCloseTo(celsius(temperatures, 85), within(0.21));
    }

    @Test
    void theCoolantPeaksAtItsTemperatureAndTime() {
        double peakY = celsius(temperatures, run.peakCoolantK() - 273.15);
        double second = (chart.right() - chart.left()) / run.lengthS();
        double peakX = chart.left() + second * run.peakCoolantAtS();
        List<double[]> points = points(temperatures, "coolant");
        assertThat(points).allSatisfy(p -> assertThat(p[1]).isGreaterThan(peakY - 0.2));
        assertThat(points).anySatisfy(p -> {
            assertThat(p[0]).isCloseTo(peakX, within(2 * second + 0.1));
            assertThat(p[1]).isCloseTo(peakY, within(0.5));
        });
    }

    @Test
    void phasesFollowTheSchedule() {
        assertThat(chart.phases()).hasSize(9);
        double second = (chart.right() - chart.left()) / 1080;
        assertThat(chart.phases().get(1).x()).isCloseTo(chart.left() + 180 * second, within(0.1));
        assertThat(chart.phases().get(1).width()).isCloseTo(45 * second, within(0.2));
        assertThat(chart.phases()).extracting(CurveChart.Phase::shaded).startsWith(false, true, false, true);
        assertThat(chart.phases().get(0).text()).isEqualTo("1 queue");
        assertThat(chart.phases().get(1).text()).isEqualTo("2");
    }

    @Test
    void curvesDifferWithoutColour() {
        assertThat(temperatures.curves())
                .extracting(c -> c.line().dash())
                .doesNotHaveDuplicates()
                .hasSize(4);
        assertThat(temperatures.curves()).extracting(CurveChart.Curve::key).contains("head", "gauge", "oil");
    }

    @Test
    void namesStandApartAndInsideTheDrawing() {
        for (Panel p : chart.panels()) {
            List<Label> labels = p.labels();
            for (int i = 1; i < labels.size(); i++) {
                assertThat(labels.get(i).y() - labels.get(i - 1).y()).isGreaterThanOrEqualTo(PanelDrawing.LABEL_HEIGHT);
                assertThat(labels.get(i).fromY())
                        .isGreaterThanOrEqualTo(labels.get(i - 1).fromY());
            }
            assertThat(labels).allSatisfy(l -> {
                assertThat(l.text().length() * RunChart.LABEL_CHARACTER).isLessThan(chart.width() - chart.right() - 20);
                assertThat(l.y()).isBetween(chart.top(), (double) chart.height());
            });
        }
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyRunIsDrawnEquallyTall(UnitSystem system) {
        CurveChart other = RunChart.of(run, 400, 420, FigureTextTest.in(system));
        assertThat(other.height()).isEqualTo(chart.height());
        assertThat(other.panels()).hasSize(5);
    }

    @Test
    void aShopInFahrenheitReadsItsOwnUnits() {
        CurveChart us = RunChart.of(run, LIMIT_K, OIL_LIMIT_K, FigureTextTest.in(UnitSystem.US));
        assertThat(us.panels().get(0).labels()).extracting(Label::text).contains("coolant limit 230\u00a0°F");
        assertThat(us.panels().get(4).title()).isEqualTo("Road speed, mph");
    }

    private Limit limit(String key) {
        return temperatures.limits().stream()
                .filter(l -> l.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** Where a temperature stands by the marks on the scale. */
    private static double celsius(Panel panel, double c) {
        Tick low = panel.ticks().get(0);
        Tick high = panel.ticks().get(panel.ticks().size() - 1);
        double from = Double.parseDouble(low.text());
        double to = Double.parseDouble(high.text());
        return low.at() + (high.at() - low.at()) * (c - from) / (to - from);
    }

    private static List<double[]> points(Panel panel, String key) {
        String points = panel.curves().stream()
                .filter(c -> c.key().equals(key))
                .findFirst()
                .orElseThrow()
                .points();
        return Arrays.stream(points.split(" "))
                .map(p -> Arrays.stream(p.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }
}

package headertank.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.app.chart.CurveChart;
import headertank.app.check.snapshot.Snapshot;
import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.PointResult;
import headertank.app.unit.UnitSystem;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Stated;
import headertank.calc.rating.CurvesAround;
import headertank.calc.rating.Plant;
import headertank.calc.result.CoolingCurves;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The curves come out of the stored check and meet in its operating point. */
class CurveChartsTest {

    private final Build build = Build.forCar(CarClass.TRACK)
            .set(BuildField.FAN_FLOW, Stated.advertised(0.9))
            .set(BuildField.CORE_WIDTH, Stated.measured(0.66))
            .build();

    @Test
    void theStoredInputsGiveBackTheValuesOfTheRating() {
        Rating rating = Drawn.RATER.preview(build, List.of(Drawn.RATER.duties().get("track")));
        Resolved back = new CarParts(Snapshot.input(rating, 1, 1)).resolved(Drawn.RATER);
        for (BuildField f : BuildField.values()) {
            assertThat(Double.valueOf(back.value(f)))
                    .as(f.key())
                    .isEqualTo(Double.valueOf(rating.resolved().value(f)));
            assertThat(back.token(f)).as(f.key()).isEqualTo(rating.resolved().token(f));
        }
    }

    @Test
    void theCurvesMeetWhereTheStoredCheckHasTheCar() {
        Rating rating =
                Drawn.RATER.preview(build, List.copyOf(Drawn.RATER.duties().values()));
        CheckInput input = Snapshot.input(rating, 1, 1);
        CheckResult result = Snapshot.result(rating, Drawn.RATER);
        Plant plant = Plant.of(new CarParts(input).resolved(Drawn.RATER));
        List<PointResult> points = result.duties().stream()
                .flatMap(d -> d.points().stream())
                .filter(p -> p.steady().isPresent())
                .toList();
        assertThat(points).hasSizeGreaterThan(4);
        for (PointResult p : points) {
            StateFigures state = new StateFigures(p);
            CoolingCurves c = CurvesAround.of(plant, state.state().orElseThrow());
            assertThat(c.at().corePa()).as(p.id()).isCloseTo(c.at().offeredPa(), within(1e-3));
            assertThat(c.heatAt().airMassKgPerS()).as(p.id()).isCloseTo(state.airKgPerS(), within(1e-6));
            assertThat(c.heatAt().heatW()).as(p.id()).isCloseTo(state.radiatorW(), within(1e-4 * state.radiatorW()));
            assertThat(state.askedW()).as(p.id()).isCloseTo(state.radiatorW(), within(1e-3 * state.radiatorW()));
        }
    }

    @Test
    void theOperatingPointLiesOnItsCurves() {
        CheckDrawing d = Drawn.of(build, "street", UnitSystem.US);
        StateCurves air = d.airCurves().orElseThrow();
        assertThat(curves(air)).hasSizeBetween(2, 3);
        assertThat(at(curves(air).get(0), air.x())).isCloseTo(air.y(), within(2.0));
        assertThat(at(curves(air).get(1), air.x())).isCloseTo(air.y(), within(2.0));
        StateCurves heat = d.heatCurves().orElseThrow();
        assertThat(at(curves(heat).get(0), heat.x())).isCloseTo(heat.y(), within(2.0));
        assertThat(at(curves(heat).get(2), heat.x())).isCloseTo(heat.y(), within(2.0));
        assertThat(air.alternative() + heat.alternative()).contains("cfm", "hp", "inH2O");
        assertThat(air.chart().across()).hasSizeBetween(3, 8);
        assertThat(air.chart().panels().get(0).ticks()).hasSizeBetween(3, 8);
    }

    private static List<CurveChart.Curve> curves(StateCurves state) {
        return state.chart().panels().get(0).curves();
    }

    private static double at(CurveChart.Curve curve, double x) {
        String[] points = curve.points().split(" ");
        for (int i = 1; i < points.length; i++) {
            String[] a = points[i - 1].split(",");
            String[] b = points[i].split(",");
            double from = Double.parseDouble(a[0]);
            double to = Double.parseDouble(b[0]);
            if (from <= x && x <= to) {
                double ya = Double.parseDouble(a[1]);
                return ya + (Double.parseDouble(b[1]) - ya) * (x - from) / (to - from);
            }
        }
        return Double.NaN;
    }
}

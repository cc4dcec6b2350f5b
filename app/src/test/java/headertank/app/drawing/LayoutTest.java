package headertank.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.app.drawing.ink.DrawingLabel;
import headertank.app.drawing.ink.DrawingPanel;
import headertank.app.drawing.ink.Stroke;
import headertank.app.unit.UnitSystem;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Stated;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The drawing shows the car that was checked, and nothing else. */
class LayoutTest {

    private static Build.Builder car() {
        return Build.forCar(CarClass.MODERN_STREET)
                .set(BuildField.CORE_WIDTH, Stated.measured(0.65))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.42))
                .set(BuildField.CORE_DEPTH, Stated.measured(0.036))
                .seen(BuildField.FAN_DRIVE, "ELECTRIC")
                .set(BuildField.FAN_COUNT, Stated.measured(2))
                .set(BuildField.FAN_DIAMETER, Stated.measured(0.30))
                .set(BuildField.FAN_COVER, Stated.measured(0.64));
    }

    private static CheckDrawing drawn(Build.Builder car) {
        return Drawn.of(car.build(), "street", UnitSystem.METRIC);
    }

    private static String texts(DrawingPanel panel) {
        return String.join(" ", panel.labels().stream().map(DrawingLabel::text).toList())
                .replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void asManyFansAsTheCarHasEachToScale(int count) {
        CheckDrawing d = drawn(car().set(BuildField.FAN_COUNT, Stated.measured(count)));
        assertThat(d.air().of("fan")).hasSize(count);
        assertThat(d.air().of("fan-side")).hasSize(1);
        assertThat(texts(d.air())).contains(count == 1 ? "1 fan, pulling" : count + " fans, pulling");
    }

    @Test
    void fansCoreAndShroudAreToScale() {
        DrawingPanel air =
                drawn(car().set(BuildField.FAN_DIAMETER, Stated.measured(0.22))).air();
        double core = width(air.of("core-face").get(0));
        double shroud = width(air.of("shroud").get(0));
        assertThat(shroud / core).isCloseTo(Math.sqrt(0.64), within(0.01));
        String fan = air.of("fan").get(0).d();
        double radius = Double.parseDouble(fan.substring(fan.indexOf('a') + 1, fan.indexOf(' ', fan.indexOf('a'))));
        assertThat(2 * radius / core).isCloseTo(0.22 / 0.65, within(0.01));
    }

    private static double width(Stroke box) {
        String[] points = box.d().replace("M", "").replace("z", "").split("L");
        return Double.parseDouble(points[1].split(" ")[0])
                - Double.parseDouble(points[0].split(" ")[0]);
    }

    @Test
    void aCarWithoutAFanHasNone() {
        CheckDrawing d = drawn(car().seen(BuildField.FAN_DRIVE, "NONE"));
        assertThat(d.air().of("fan")).isEmpty();
        assertThat(d.air().of("fan-side")).isEmpty();
        assertThat(d.air().of("shroud")).isEmpty();
        assertThat(d.sentences()).contains("There is no fan.");
        assertThat(d.coolant().of("fan-sensor")).isEmpty();
    }

    @Test
    void aPushingFanStandsInFrontAndAClutchFanHasItsClutch() {
        CheckDrawing pushing = drawn(car().seen(BuildField.FAN_MOUNTING, "PUSHING"));
        assertThat(left(pushing.air(), "fan-side")).isLessThan(left(pushing.air(), "core"));
        CheckDrawing clutch =
                drawn(car().seen(BuildField.FAN_MOUNTING, "PULLING").seen(BuildField.FAN_DRIVE, "CLUTCH"));
        assertThat(left(clutch.air(), "fan-side")).isGreaterThan(left(clutch.air(), "core"));
        assertThat(clutch.air().of("clutch")).hasSize(1);
        assertThat(pushing.air().of("clutch")).isEmpty();
    }

    private static double left(DrawingPanel panel, String part) {
        String d = panel.of(part).get(0).d();
        return Double.parseDouble(d.substring(1, d.indexOf(' ')));
    }

    @ParameterizedTest
    @CsvSource({"SIDES,1", "SIDES,2", "SIDES,3", "TOP_AND_BOTTOM,1", "TOP_AND_BOTTOM,2", "TOP_AND_BOTTOM,3"})
    void anArrowForEachPassAndAWallBetweenThem(String tanks, int passes) {
        DrawingPanel coolant = drawn(
                        car().seen(BuildField.CORE_TANKS, tanks).set(BuildField.CORE_PASSES, Stated.measured(passes)))
                .coolant();
        assertThat(coolant.of("pass")).hasSize(passes);
        assertThat(coolant.of("pass-head")).hasSize(passes);
        assertThat(coolant.of("baffle")).hasSize(passes - 1);
        assertThat(coolant.of("tank")).hasSize(2);
        for (int i = 1; i < passes; i++) {
            double[] before = ends(coolant.of("pass").get(i - 1));
            double[] here = ends(coolant.of("pass").get(i));
            int along = tanks.equals("SIDES") ? 0 : 1;
            assertThat(Math.signum(before[2 + along] - before[along]))
                    .as("each pass runs against the one before")
                    .isEqualTo(-Math.signum(here[2 + along] - here[along]));
        }
    }

    private static double[] ends(Stroke line) {
        String[] points = line.d().replace("M", "").split("L");
        String[] from = points[0].split(" ");
        String[] to = points[points.length - 1].split(" ");
        return new double[] {
            Double.parseDouble(from[0]),
            Double.parseDouble(from[1]),
            Double.parseDouble(to[0]),
            Double.parseDouble(to[1])
        };
    }

    @Test
    void whatStandsInFrontOfTheCoreIsDrawnInFrontOfIt() {
        DrawingPanel air = drawn(car().seen(BuildField.CHARGE_COOLER, "YES")
                        .seen(BuildField.CONDENSER, "YES")
                        .seen(BuildField.OIL_COOLER, "BOTH"))
                .air();
        for (String part : List.of("charge-cooler", "condenser", "oil-cooler")) {
            assertThat(air.of(part)).hasSize(1);
            assertThat(left(air, part)).isLessThan(left(air, "core"));
        }
        DrawingPanel none = drawn(car().seen(BuildField.CHARGE_COOLER, "NO")
                        .seen(BuildField.CONDENSER, "NO")
                        .seen(BuildField.OIL_COOLER, "NONE"))
                .air();
        assertThat(none.of("charge-cooler")).isEmpty();
        assertThat(none.of("condenser")).isEmpty();
        assertThat(none.of("oil-cooler")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"HEAD,340,470,154,222", "BLOCK,336,470,222,352", "RADIATOR_HOSE,200,290,110,140", "TANK,180,200,156,352"
    })
    void theGaugeSitsWhereItsSensorIs(String place, double left, double right, double top, double bottom) {
        CheckDrawing d = drawn(car().seen(BuildField.GAUGE_SENSOR, place)
                .seen(BuildField.CORE_TANKS, "SIDES")
                .seen(BuildField.FAN_SENSOR, place));
        for (String part : List.of("gauge", "fan-sensor")) {
            Stroke symbol = d.coolant().of(part).get(0);
            String[] start = symbol.d().substring(1).split("[ aL]");
            double x = Double.parseDouble(start[0]) + (part.equals("gauge") ? 9 : 0);
            double y = Double.parseDouble(start[1]) + (part.equals("gauge") ? 0 : 10);
            assertThat(x).isBetween(left, right);
            assertThat(y).isBetween(top, bottom);
        }
    }

    @ParameterizedTest
    @CsvSource({"OPEN,bypass", "RESTRICTED,bypass-restricted", "BLOCKED,bypass-blocked", "CLOSES_WITH_LIFT,bypass-valve"
    })
    void theBypassShowsItsState(String token, String part) {
        DrawingPanel coolant =
                drawn(car().seen(BuildField.THERMOSTAT_BYPASS, token)).coolant();
        assertThat(coolant.of(part)).isNotEmpty();
        for (String other : List.of("bypass-restricted", "bypass-blocked", "bypass-valve")) {
            assertThat(coolant.of(other).isEmpty()).isEqualTo(!other.equals(part));
        }
    }

    @ParameterizedTest
    @CsvSource({"UNDER_CAR,false", "HOOD_VENT,false", "NO_WAY_OUT,true"})
    void theExitIsAnArrowThatEndsAtAWallWhenThereIsNoWayOut(String exit, boolean wall) {
        DrawingPanel air = drawn(car().seen(BuildField.AIR_EXIT, exit)).air();
        assertThat(air.of("exit")).hasSize(1);
        assertThat(air.of("exit-wall").isEmpty()).isEqualTo(!wall);
    }

    @Test
    void whatNobodyStatedIsDashedAndSaysSo() {
        CheckDrawing stated = drawn(car());
        CheckDrawing assumed = drawn(car().unknown(BuildField.FAN_DIAMETER));
        assertThat(stated.air().of("fan")).noneMatch(Stroke::assumed);
        assertThat(assumed.air().of("fan")).allMatch(Stroke::assumed);
        assertThat(texts(stated.air())).contains("Diameter 300.0 mm").doesNotContain("300.0 mm (assumed)");
        assertThat(texts(assumed.air())).contains("mm (assumed)");
    }

    @Test
    void theFiguresAreThoseOfTheStoredCheckInTheUnitsOfTheShop() {
        Build build = car().build();
        CheckDrawing metric = Drawn.of(build, "street", UnitSystem.METRIC);
        CheckDrawing us = Drawn.of(build, "street", UnitSystem.US);
        double hot = metric.point().steady().orElseThrow().engineOutK();
        String celsius = Drawn.words(UnitSystem.METRIC)
                .show(hot, headertank.app.unit.Dimension.TEMPERATURE)
                .replace('\u00a0', ' ');
        String fahrenheit = Drawn.words(UnitSystem.US)
                .show(hot, headertank.app.unit.Dimension.TEMPERATURE)
                .replace('\u00a0', ' ');
        assertThat(texts(metric.coolant())).contains(celsius, "l/min", "kW", "bar");
        assertThat(texts(us.coolant())).contains(fahrenheit, "gpm", "hp", "psi");
        assertThat(String.join(" ", metric.sentences()).replace('\u00a0', ' ')).contains(celsius);
        assertThat(texts(metric.air())).contains("kg/s", "m³/h", "km/h").doesNotContain("–");
    }

    @Test
    void aCarWithoutASteadyStateIsDrawnWithoutFigures() {
        CheckDrawing d = Drawn.of(
                car().seen(BuildField.FAN_DRIVE, "NONE")
                        .set(BuildField.ENGINE_POWER, Stated.measured(9e5))
                        .set(BuildField.CORE_WIDTH, Stated.measured(0.15))
                        .set(BuildField.CORE_HEIGHT, Stated.measured(0.10))
                        .build(),
                "track",
                UnitSystem.METRIC);
        assertThat(d.point().steady()).isEmpty();
        assertThat(texts(d.coolant())).contains("–").doesNotContain("NaN", "Infinity");
        assertThat(d.curves()).isEmpty();
        assertThat(d.sentences()).anyMatch(s -> s.contains("no steady state"));
    }
}

package headertank.app.demo;

import static headertank.calc.carspec.BuildField.*;
import static headertank.calc.quantity.Provenance.ADVERTISED;
import static headertank.calc.quantity.Provenance.DATASHEET;
import static headertank.calc.quantity.Provenance.MEASURED;

import headertank.app.carspec.Spec;
import headertank.app.carspec.SpecBuilder;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.Price;
import headertank.calc.carspec.CarClass;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Invented parts, and which of them the invented cars have. Nobody makes or sells any of these. */
final class DemoParts {

    static final String FAN_OFFER = "Twin twelve inch from an offer (invented)";
    static final String CAP_13 = "Cap 1.3 bar (invented)";
    static final String THERMOSTAT_78 = "Thermostat 78 C (invented)";
    static final String CORE_48 = "Dense core 650 x 400 x 48 (invented)";

    static final List<PartContent> ALL = List.of(
            part(PartKind.RADIATOR, CORE_48, "42000", "1 on the shelf", s -> s.seen(CORE_CLASS, "dense-aluminium")
                    .set(CORE_WIDTH, "650 mm", MEASURED)
                    .set(CORE_HEIGHT, "400 mm", MEASURED)
                    .set(CORE_DEPTH, "48 mm", MEASURED)
                    .seen(CORE_TANKS, "SIDES")),
            part(PartKind.RADIATOR, "Two-row core 600 x 400 x 52 (invented)", "31000", "to order", s -> s.seen(
                            CORE_CLASS, "two-row-aluminium")
                    .set(CORE_WIDTH, "600 mm", DATASHEET)
                    .set(CORE_HEIGHT, "400 mm", DATASHEET)
                    .set(CORE_DEPTH, "52 mm", DATASHEET)),
            part(PartKind.FAN, FAN_OFFER, "8900", "4 left over, not to be fitted again", s -> s.seen(
                            FAN_DRIVE, "ELECTRIC")
                    .set(FAN_COUNT, "2", MEASURED)
                    .set(FAN_DIAMETER, "12 in", ADVERTISED)
                    .set(FAN_FLOW, "2500 cfm", ADVERTISED)
                    .set(FAN_CURRENT, "11 A", MEASURED)),
            part(PartKind.FAN, "Twin fourteen inch (invented)", "26500", "2 on the shelf", s -> s.seen(
                            FAN_DRIVE, "ELECTRIC")
                    .set(FAN_COUNT, "2", DATASHEET)
                    .set(FAN_DIAMETER, "14 in", DATASHEET)
                    .set(FAN_FLOW, "1900 cfm", DATASHEET)
                    .set(FAN_CURRENT, "25 A", MEASURED)
                    .set(FAN_START_CURRENT, "30 A", MEASURED)),
            part(PartKind.CAP, CAP_13, "950", "a drawer full", s -> s.set(CAP_PRESSURE, "1.3 bar", DATASHEET)),
            part(
                    PartKind.THERMOSTAT,
                    THERMOSTAT_78,
                    "2400",
                    "3 on the shelf",
                    s -> s.set(THERMOSTAT_OPENING, "78 C", DATASHEET)),
            part(PartKind.CONTROLLER, "Ramp controller 85 C (invented)", "13900", "", s -> s.seen(CONTROL_KIND, "RAMP")
                    .set(CONTROL_SET, "85 C", DATASHEET)
                    .set(CONTROL_BAND, "15 K", DATASHEET)
                    .set(CONTROL_MIN_DUTY, "20 %", DATASHEET)),
            part(
                    PartKind.OIL_COOLER,
                    "Oil-air cooler, 19 rows (invented)",
                    "17500",
                    "to order",
                    s -> s.seen(OIL_COOLER, "AIR")),
            part(
                    PartKind.SENSOR,
                    "Gauge sensor for the head (invented)",
                    "3200",
                    "",
                    s -> s.seen(GAUGE_SENSOR, "HEAD")));

    /** Names of the parts that a car's revisions name, oldest first, by plate. */
    static final Map<String, List<List<String>>> ON_CARS = Map.of(
            "DEMO 01", List.of(List.of(CORE_48, CAP_13, THERMOSTAT_78)),
            "DEMO 02", List.of(List.of(CAP_13, THERMOSTAT_78), List.of(CAP_13, FAN_OFFER)));

    private DemoParts() {}

    private static PartContent part(
            PartKind kind, String name, String cents, String stock, UnaryOperator<SpecBuilder> values) {
        Spec spec = values.apply(SpecBuilder.of(CarClass.TRACK, "street")).spec();
        return new PartContent(
                kind, name, "", spec.values(), Optional.of(new Price(Long.parseLong(cents), "EUR")), stock);
    }

    /** Names of the parts of a car's revision; none when nothing is said. */
    static List<String> on(String plate, int step) {
        List<List<String>> steps = ON_CARS.getOrDefault(plate, List.of());
        return step < steps.size() ? steps.get(step) : List.of();
    }
}

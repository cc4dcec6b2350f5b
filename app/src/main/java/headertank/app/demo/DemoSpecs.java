package headertank.app.demo;

import static headertank.calc.carspec.BuildField.*;
import static headertank.calc.quantity.Provenance.ADVERTISED;
import static headertank.calc.quantity.Provenance.DATASHEET;
import static headertank.calc.quantity.Provenance.GUESSED;
import static headertank.calc.quantity.Provenance.MEASURED;

import headertank.app.carspec.Spec;
import headertank.app.carspec.SpecBuilder;
import headertank.calc.carspec.CarClass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** What the invented shop knows of its invented cars. */
final class DemoSpecs {

    record Step(Spec spec, String reason) {}

    /** The revisions of each car, oldest first, by plate. */
    static final Map<String, List<Step>> ALL = all();

    private DemoSpecs() {}

    private static Map<String, List<Step>> all() {
        Map<String, List<Step>> all = new LinkedHashMap<>();
        all.put("DEMO 01", coupe());
        all.put("DEMO 02", drifter());
        all.put("DEMO 03", wagon());
        all.put("DEMO 05", hatch());
        all.put("DEMO 06", pickup());
        return all;
    }

    private static List<Step> coupe() {
        return first(SpecBuilder.of(CarClass.TRACK, "street", "track")
                .seen(ENGINE_CLASS, "PETROL_TURBO")
                .set(ENGINE_DISPLACEMENT, "1998 cc", DATASHEET)
                .set(ENGINE_POWER, "350 hp", ADVERTISED)
                .set(ENGINE_SPEED, "6800 rpm", DATASHEET)
                .seen(FUEL, "PETROL_E10")
                .set(AMBIENT, "33 C", GUESSED)
                .seen(CORE_CLASS, "dense-aluminium")
                .set(CORE_WIDTH, "650 mm", MEASURED)
                .set(CORE_HEIGHT, "400 mm", MEASURED)
                .set(CORE_DEPTH, "48 mm", MEASURED)
                .seen(CORE_TANKS, "SIDES")
                .seen(FAN_DRIVE, "ELECTRIC")
                .set(FAN_COUNT, "2", MEASURED)
                .set(FAN_DIAMETER, "12 in", DATASHEET)
                .seen(FAN_MOUNTING, "PULLING")
                .set(FAN_CURRENT, "13 A", MEASURED)
                .set(FAN_COVER, "95 %", MEASURED)
                .seen(CONTROL_KIND, "RAMP")
                .set(CONTROL_SET, "90 C", MEASURED)
                .seen(COOLANT_BASE, "ETHYLENE_GLYCOL")
                .set(COOLANT_GLYCOL, "30 %", MEASURED)
                .set(CAP_PRESSURE, "1.3 bar", DATASHEET)
                .seen(THERMOSTAT, "FITTED")
                .set(THERMOSTAT_OPENING, "78 C", DATASHEET)
                .seen(AIR_DUCT, "SEALED")
                .set(ALTERNATOR, "90 A", DATASHEET));
    }

    private static List<Step> drifter() {
        List<Step> steps = first(SpecBuilder.of(CarClass.DRIFT, "drift")
                .seen(ENGINE_CLASS, "PETROL_TURBO")
                .set(ENGINE_DISPLACEMENT, "2998 cc", DATASHEET)
                .set(ENGINE_POWER, "330 kW", MEASURED)
                .set(ENGINE_SPEED, "6800 rpm", MEASURED)
                .seen(FUEL, "E85")
                .set(AMBIENT, "35 C", GUESSED)
                .seen(CORE_CLASS, "two-row-aluminium")
                .set(CORE_WIDTH, "600 mm", MEASURED)
                .set(CORE_HEIGHT, "400 mm", MEASURED)
                .set(CORE_DEPTH, "52 mm", MEASURED)
                .set(CORE_TILT, "20", MEASURED)
                .seen(FAN_DRIVE, "ELECTRIC")
                .set(FAN_COUNT, "2", MEASURED)
                .set(FAN_DIAMETER, "14 in", DATASHEET)
                .seen(FAN_MOUNTING, "PULLING")
                .set(FAN_FLOW, "1900 cfm", DATASHEET)
                .set(FAN_CURRENT, "25 A", MEASURED)
                .set(FAN_START_CURRENT, "30 A", MEASURED)
                .set(FAN_COVER, "90 %", MEASURED)
                .seen(CONTROL_KIND, "RAMP")
                .set(CONTROL_SET, "85 C", MEASURED)
                .set(CONTROL_BAND, "15 K", MEASURED)
                .seen(COOLANT_BASE, "ETHYLENE_GLYCOL")
                .set(COOLANT_GLYCOL, "30 %", MEASURED)
                .set(CAP_PRESSURE, "1.3 bar", DATASHEET)
                .seen(THERMOSTAT, "FITTED")
                .set(THERMOSTAT_OPENING, "78 C", DATASHEET)
                .seen(GAUGE_SENSOR, "HEAD")
                .seen(AIR_EXIT, "HOOD_VENT")
                .set(ALTERNATOR, "110 A", DATASHEET));
        next(
                steps,
                "Old fans rattled. New pair from an offer, mounted in front; thermostat left out as it was stuck.",
                s -> s.seen(FAN_MOUNTING, "PUSHING")
                        .set(FAN_DIAMETER, "12 in", ADVERTISED)
                        .set(FAN_FLOW, "2500 cfm", ADVERTISED)
                        .set(FAN_CURRENT, "11 A", MEASURED)
                        .unknown(FAN_START_CURRENT)
                        .set(FAN_COVER, "55 %", MEASURED)
                        .seen(THERMOSTAT, "REMOVED")
                        .seen(THERMOSTAT_BYPASS, "OPEN"));
        return steps;
    }

    private static List<Step> wagon() {
        List<Step> steps = first(SpecBuilder.of(CarClass.MODERN_STREET, "street")
                .seen(ENGINE_CLASS, "PETROL_NATURAL")
                .set(ENGINE_POWER, "120 kW", DATASHEET)
                .set(AMBIENT, "36 C", GUESSED)
                .set(CORE_WIDTH, "600 mm", GUESSED)
                .set(CORE_HEIGHT, "380 mm", GUESSED)
                .set(CAP_PRESSURE, "1.1 bar", DATASHEET));
        next(steps, "Radiator measured; a quarter of its face is full of insects and bent fins.", s -> s.set(
                        CORE_WIDTH, "620 mm", MEASURED)
                .set(CORE_HEIGHT, "370 mm", MEASURED)
                .set(CORE_BLOCKED, "25 %", MEASURED));
        return steps;
    }

    private static List<Step> hatch() {
        return first(SpecBuilder.of(CarClass.TRACK, "street", "track")
                .seen(ENGINE_CLASS, "PETROL_TURBO")
                .set(ENGINE_DISPLACEMENT, "1.6 L", DATASHEET)
                .set(ENGINE_POWER, "210 kW", MEASURED)
                .seen(FUEL, "PETROL_E10")
                .seen(FUEL_OF_DONOR, "ETHANOL")
                .set(CORE_WIDTH, "520 mm", MEASURED)
                .set(CORE_HEIGHT, "380 mm", MEASURED)
                .set(CORE_DEPTH, "42 mm", MEASURED)
                .set(CAP_PRESSURE, "1.1 bar", MEASURED));
    }

    private static List<Step> pickup() {
        return first(SpecBuilder.of(CarClass.OLD_STREET, "street")
                .seen(ENGINE_CLASS, "PETROL_OLD")
                .set(ENGINE_DISPLACEMENT, "5.7 L", DATASHEET)
                .set(ENGINE_POWER, "150 kW", GUESSED)
                .seen(FAN_DRIVE, "CLUTCH")
                .set(FAN_DIAMETER, "18 in", MEASURED)
                .set(CORE_TILT, "20", MEASURED)
                .set(CAP_PRESSURE, "0.5 bar", MEASURED)
                .seen(THERMOSTAT, "REMOVED")
                .seen(THERMOSTAT_BYPASS, "OPEN")
                .seen(GAUGE_SENSOR, "RADIATOR_HOSE"));
    }

    private static List<Step> first(SpecBuilder spec) {
        return new ArrayList<>(List.of(new Step(spec.spec(), "")));
    }

    private static void next(List<Step> steps, String reason, UnaryOperator<SpecBuilder> change) {
        Spec before = steps.get(steps.size() - 1).spec();
        steps.add(new Step(change.apply(SpecBuilder.from(before)).spec(), reason));
    }
}

package headertank.app.part;

import static headertank.calc.carspec.BuildField.*;

import headertank.calc.carspec.BuildField;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The kinds of part and the fields of a spec that each sets: what the part itself brings along. What depends on the car it goes
 * into (tilt, how far the shroud covers the core, where a hose runs) is no value of a part. A car has one slot for each kind.
 */
public enum PartKind {
    RADIATOR(
            Map.of(),
            CORE_CLASS,
            CORE_WIDTH,
            CORE_HEIGHT,
            CORE_DEPTH,
            CORE_TANKS,
            CORE_PASSES,
            CORE_MATERIAL,
            FIN_KIND,
            FIN_PITCH,
            FIN_HEIGHT,
            TUBE_ROWS,
            TUBE_HEIGHT),
    FAN(Map.of(), FAN_DRIVE, FAN_COUNT, FAN_DIAMETER, FAN_FLOW, FAN_SHUT_OFF, FAN_CURRENT, FAN_START_CURRENT),
    CAP(Map.of(), CAP_PRESSURE),
    THERMOSTAT(Map.of(BuildField.THERMOSTAT, "FITTED"), THERMOSTAT_OPENING),
    PUMP(Map.of(), PUMP_DRIVE, PUMP_FLOW, PUMP_HEAD),
    OIL_COOLER(Map.of(), BuildField.OIL_COOLER, OIL_COOLER_CONDUCTANCE),
    SENSOR(Map.of(), GAUGE_SENSOR, FAN_SENSOR),
    CONTROLLER(Map.of(), CONTROL_KIND, CONTROL_SET, CONTROL_BAND, CONTROL_MIN_DUTY);

    private final Map<BuildField, String> implied;
    private final List<BuildField> fields;

    PartKind(Map<BuildField, String> implied, BuildField... fields) {
        this.implied = implied;
        this.fields = List.of(fields);
    }

    public static Optional<PartKind> of(String token) {
        return Arrays.stream(values()).filter(k -> k.name().equals(token)).findFirst();
    }

    /** Fields that a part of this kind may state, in the order of the form. */
    public List<BuildField> fields() {
        return fields;
    }

    /** Choices that fitting any part of this kind makes: with a thermostat on the car, the thermostat is fitted. */
    public Map<BuildField, String> implied() {
        return implied;
    }

    public String messageKey() {
        return "part.kind." + name();
    }
}

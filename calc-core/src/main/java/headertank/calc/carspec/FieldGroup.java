package headertank.calc.carspec;

/** The parts of the car that the fields of a build belong to, in the order in which a shop looks at them. */
public enum FieldGroup {
    ENGINE,
    FUEL,
    USE,
    RADIATOR,
    FAN,
    FAN_CONTROL,
    COOLANT,
    THERMOSTAT,
    PUMP,
    SENSOR,
    OIL,
    AIR,
    HOOD,
    ELECTRIC,
    LIMIT
}

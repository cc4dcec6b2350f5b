package headertank.calc.carspec;

/** The parts of the car that the fields of a build belong to, in the order in which a shop looks at them. */
public enum FieldGroup {
    ENGINE("Engine"),
    FUEL("Fuel"),
    USE("Use and climate"),
    RADIATOR("Radiator"),
    FAN("Fans"),
    FAN_CONTROL("Fan control"),
    COOLANT("Coolant and cap"),
    THERMOSTAT("Thermostat and bypass"),
    PUMP("Water pump and hoses"),
    SENSOR("Sensors"),
    OIL("Oil"),
    AIR("Air path"),
    HOOD("Hood panel"),
    ELECTRIC("Alternator"),
    LIMIT("Limits");

    private final String label;

    FieldGroup(String label) {
        this.label = label;
    }

    /** @return plain English heading */
    public String label() {
        return label;
    }
}

package headertank.calc.carspec;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a model of a car may be off by and no field says, once: its stable key and the part that it belongs to. What is learned of it
 * stays with that part. How far each may be off stands in {@code uncertainty.ModelSpread}, in this order.
 */
public enum ModelFactor {
    /** Factor on the air-side heat transfer coefficient of the core. */
    AIR_SIDE("airSide", FieldGroup.RADIATOR),
    /** Factor on the friction of the core's air side. */
    AIR_FRICTION("airFriction", FieldGroup.RADIATOR),
    /** Factor on the heat transfer coefficient in the core's tubes. */
    TUBE_SIDE("tubeSide", FieldGroup.RADIATOR),
    /** Factor on the share of the released heat that reaches the coolant. */
    COOLANT_HEAT("coolantHeat", FieldGroup.ENGINE),
    /** Factor on engine friction. */
    ENGINE_FRICTION("engineFriction", FieldGroup.ENGINE),
    /** Factor on the influence of the fuel on wall heat. */
    FUEL_HEAT("fuelHeat", FieldGroup.FUEL),
    /** Factor on the losses of inlet and exit. */
    AIR_LOSSES("airLosses", FieldGroup.AIR),
    /** Offset of the inlet's pressure coefficient. */
    INLET_PRESSURE("inletPressure", FieldGroup.AIR),
    /** Offset of the exit's pressure coefficient. */
    EXIT_PRESSURE("exitPressure", FieldGroup.AIR),
    /** Factor on the sealing of the duct. */
    SEALING("sealing", FieldGroup.AIR),
    /** Offset of what sideslip takes from the ram pressure. */
    SIDESLIP("sideslip", FieldGroup.AIR),
    /** Factor on the resistance of fans beyond free delivery. */
    FAN_OVERRUN("fanOverrun", FieldGroup.FAN),
    /** Factor on the coolant circuit's resistances. */
    CIRCUIT("circuit", FieldGroup.PUMP),
    /** Factor on the conductances between oil, coolant and air. */
    OIL_COOLERS("oilCoolers", FieldGroup.OIL),
    /** How hard this driver drives, in standard deviations of each operating point. */
    DEMAND("demand", FieldGroup.USE),
    /** Offset of the coolant's boiling point. */
    BOILING("boiling", FieldGroup.COOLANT),
    /** Factor on the engine's heat capacity. */
    METAL_MASS("metalMass", FieldGroup.ENGINE),
    /** Offset of the exponent by which the wall's share of the heat falls with load. */
    LOAD_EXPONENT("loadExponent", FieldGroup.ENGINE),
    /** Factor on the volumetric efficiency, by which a log's manifold pressure becomes heat. */
    CHARGE("charge", FieldGroup.ENGINE),
    /** Factor on what a shut thermostat leaks. */
    LEAK("leak", FieldGroup.THERMOSTAT),
    /** Factor on what block, head and hoses give off to the air around them. */
    SURFACE("surface", FieldGroup.ENGINE),
    /** Factor on the conductance between the engine's metal and its coolant. */
    CONTACT("contact", FieldGroup.ENGINE),
    /** Factor on the heat capacity that follows the oil. */
    OIL_MASS("oilMass", FieldGroup.ENGINE),
    /** Offset of what the gauge's sensor shows [K]. */
    GAUGE("gauge", FieldGroup.SENSOR),
    /** Factor on the heat capacity of radiator, hoses and the coolant in them. */
    RADIATOR_MASS("radiatorMass", FieldGroup.RADIATOR),
    /** Factor on the width over which the thermostat opens. */
    THERMOSTAT_WIDTH("thermostatWidth", FieldGroup.THERMOSTAT),
    /** Factor on what a core loses where no air is driven through it. */
    STANDING_CORE("standingCore", FieldGroup.AIR);

    private final String key;
    private final FieldGroup part;

    ModelFactor(String name, FieldGroup part) {
        this.key = "model." + name;
        this.part = part;
    }

    /** @return the factor with this key, if there is one */
    public static Optional<ModelFactor> ofKey(String key) {
        return Arrays.stream(values()).filter(f -> f.key.equals(key)).findFirst();
    }

    /** @return stable key, none of which is that of a {@link BuildField} */
    public String key() {
        return key;
    }

    /** @return the part that it belongs to */
    public FieldGroup part() {
        return part;
    }
}

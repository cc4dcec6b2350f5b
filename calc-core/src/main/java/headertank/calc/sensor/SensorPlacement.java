package headertank.calc.sensor;

/** Where the temperature sensor sits. The temperature that matters is the one in head or block. */
public enum SensorPlacement {
    /** In the head, near its hot wall. */
    HEAD,
    /** In the block's coolant. */
    BLOCK,
    /** In or on the hose from the thermostat to the radiator. */
    RADIATOR_HOSE,
    /** In the radiator's cold tank. */
    TANK
}

package headertank.calc.choice;

/** Where the temperature sensor sits. The temperature that matters is the one in head or block. */
public enum SensorPlacement {
    /** In the head, near its hot wall. */
    HEAD,
    /** In the block's coolant. */
    BLOCK,
    /** In or on the hose from the thermostat to the radiator. */
    RADIATOR_HOSE,
    /** In the radiator's cold tank. */
    TANK;

    /** @return whether coolant has to reach it before it can tell anything */
    public boolean awayFromEngine() {
        return this == RADIATOR_HOSE || this == TANK;
    }
}

package headertank.calc.coolant;

/** Which tank carries the pressure cap, that is where the pressure is known. */
public enum CapPosition {
    /** Before the radiator's core: the top tank of a core with top and bottom tanks. */
    HOT_TANK,
    /** Behind the core: often so with side tanks. */
    COLD_TANK
}

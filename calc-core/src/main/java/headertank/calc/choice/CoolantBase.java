package headertank.calc.choice;

/** What is mixed into the water of the coolant. */
public enum CoolantBase {
    /** Nothing: plain water. */
    WATER,
    /** Ethylene glycol. */
    ETHYLENE_GLYCOL,
    /** Propylene glycol. */
    PROPYLENE_GLYCOL
}

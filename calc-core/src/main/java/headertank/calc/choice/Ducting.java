package headertank.calc.choice;

/** How the air is led from the inlet to the core. */
public enum Ducting {
    /** No way past the core. */
    SEALED,
    /** Gaps around the core. */
    PARTLY,
    /** No ducts. */
    OPEN
}

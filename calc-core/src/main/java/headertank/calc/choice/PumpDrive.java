package headertank.calc.choice;

/** What turns the coolant pump. */
public enum PumpDrive {
    /** The engine. */
    ENGINE,
    /** An electric motor. */
    ELECTRIC
}

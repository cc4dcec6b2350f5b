package headertank.calc.choice;

/** What turns the fans. */
public enum FanDrive {
    /** Electric motors. */
    ELECTRIC,
    /** The engine, through a viscous clutch. */
    CLUTCH,
    /** The car has no fan. */
    NONE
}

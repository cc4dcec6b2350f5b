package headertank.calc.carspec;

/** Kinds of car whose typical values stand in for what a shop does not know; see {@link ClassDefaults}. */
public enum CarClass {
    /** A road car from before about 1985. */
    OLD_STREET,
    /** A road car since then. */
    MODERN_STREET,
    /** A car set up for laps at speed. */
    TRACK,
    /** A car set up for drifting. */
    DRIFT
}

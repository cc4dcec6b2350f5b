package headertank.calc.carspec;

/** Kinds of car whose typical values stand in for what a shop does not know; see {@link ClassDefaults}. */
public enum CarClass {
    /** A road car from before about 1985. */
    OLD_STREET("Old street car, before about 1985"),
    /** A road car since then. */
    MODERN_STREET("Modern street car"),
    /** A car set up for laps at speed. */
    TRACK("Track car"),
    /** A car set up for drifting. */
    DRIFT("Drift car");

    private final String label;

    CarClass(String label) {
        this.label = label;
    }

    /** @return plain English name */
    public String label() {
        return label;
    }
}

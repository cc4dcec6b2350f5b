package headertank.calc.electric;

import headertank.calc.quantity.Range;

/** How fans are switched on. */
public enum FanStart {
    /** By a relay, at once. */
    ABRUPT(1.2),
    /** By a controller that winds them up. */
    SOFT(1.0);

    /** Locked-rotor current of a brushed motor over its running current, for less than 0.3 s [-]; from memory. */
    public static final Range LOCKED_ROTOR_FACTOR = Range.of(3, 5);

    private final double factor;

    FanStart(double factor) {
        this.factor = factor;
    }

    /**
     * Current to budget for 1 to 2 s at the start, over running current: 1.2 abrupt (25 A running, 30 A at the start;
     * common practice, no source), 1 when wound up. Wire and relay must bear {@link #LOCKED_ROTOR_FACTOR} for an instant.
     *
     * @return factor on running current [-]
     */
    public double startFactor() {
        return factor;
    }
}

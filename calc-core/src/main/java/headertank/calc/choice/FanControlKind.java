package headertank.calc.choice;

/** How the fans are switched; see {@code control.FanControlSpec}. */
public enum FanControlKind {
    /** One relay with a hysteresis. */
    SWITCH,
    /** Two relays: a low step and full speed. */
    TWO_STEP,
    /** In proportion to the temperature, over a band. */
    RAMP,
    /** By an engine controller's table. */
    TABLE,
    /** At full duty whenever the engine runs. */
    ALWAYS_ON
}

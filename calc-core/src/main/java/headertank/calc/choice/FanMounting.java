package headertank.calc.choice;

/** On which side of the core the fans sit. */
public enum FanMounting {
    /** Behind the core. */
    PULLING,
    /** In front of the core. */
    PUSHING
}

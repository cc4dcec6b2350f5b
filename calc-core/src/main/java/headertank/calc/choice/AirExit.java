package headertank.calc.choice;

/** Where the hot air leaves. */
public enum AirExit {
    /** Below the car. */
    UNDER_CAR,
    /** Through an opening in the hood. */
    HOOD_VENT,
    /** It has no opening worth the name. */
    NO_WAY_OUT
}

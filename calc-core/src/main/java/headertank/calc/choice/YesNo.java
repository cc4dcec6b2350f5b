package headertank.calc.choice;

/** Whether the car has something. */
public enum YesNo {
    /** It has. */
    YES,
    /** It has not. */
    NO
}

package headertank.calc.carspec;

/** How well a car is known, from least to best. */
public enum HowKnown {
    /** By what is stated of it and its class. */
    FROM_THE_SHEET,
    /** By readings that have settled, of the car or of a part. */
    FROM_ONE_READING,
    /** By a log of a run. */
    FROM_A_RUN,
    /** By a log, and another run that it was not learned from came out within its band. */
    CONFIRMED_BY_ANOTHER_RUN
}

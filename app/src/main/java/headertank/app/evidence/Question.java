package headertank.app.evidence;

/**
 * What takes seconds to work out of a car and is kept.
 *
 * @param shop whose car it is
 * @param kind what is asked
 * @param key everything that the answer follows from, as text
 */
public record Question(long shop, long car, Kind kind, String key) {

    /** What may be asked; the names are stored. */
    public enum Kind {
        /** What its evidence teaches. */
        LEARNED,
        /** Its margins with and without what it taught. */
        MARGINS,
        /** What to find out next. */
        NEXT,
        /** Whether a log that was not learned from came out as the car is known. */
        CONFIRMS
    }
}

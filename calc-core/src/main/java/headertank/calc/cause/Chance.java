package headertank.calc.cause;

/**
 * How often something is seen with a cause.
 *
 * @param what what is seen
 * @param share how often, above 0 and below 1; what is left goes to the other answers to the same question as on a hot car without the
 *     cause [-]
 */
public record Chance(Observation what, double share) {
    public Chance {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException(what + ": share = " + share + ", allowed is between 0 and 1");
        }
    }
}

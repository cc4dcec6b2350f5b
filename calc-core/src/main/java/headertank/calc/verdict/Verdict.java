package headertank.calc.verdict;

/** Whether a car may leave for a duty. */
public enum Verdict {
    /** It holds, with room for what is not known. */
    GO,
    /** It holds under the stated conditions. */
    GO_WITH_CONDITIONS,
    /** It does not hold, or nobody could say that it does. */
    NO_GO;

    /** @return the worse of the two */
    public Verdict worse(Verdict other) {
        return ordinal() >= other.ordinal() ? this : other;
    }
}

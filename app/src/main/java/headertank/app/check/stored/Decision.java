package headertank.app.check.stored;

/** What whoever signs decides. */
public enum Decision {
    /** The car may leave for every duty asked for. */
    DELIVER,
    /** It may leave; the conditions are accepted. */
    DELIVER_WITH_CONDITIONS,
    /** It stays. */
    HOLD_BACK
}

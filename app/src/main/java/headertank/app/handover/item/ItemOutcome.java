package headertank.app.handover.item;

/** What came of an item. */
public enum ItemOutcome {
    /** Done or seen, and right. */
    DONE,
    /** Measured; the reading says the rest. */
    MEASURED,
    /** Something is wrong. */
    FAULT,
    /** Left out, for a reason. */
    NOT_APPLICABLE
}

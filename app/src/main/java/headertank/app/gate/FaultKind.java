package headertank.app.gate;

/** What kind of thing is open. */
public enum FaultKind {
    /** Somebody has found something wrong at an item. */
    FOUND,
    /** A reading lies outside what is expected. */
    READING,
    /** The car was sent back from its check list. */
    SENT_BACK
}

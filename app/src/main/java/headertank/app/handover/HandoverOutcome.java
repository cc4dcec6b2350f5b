package headertank.app.handover;

/** The last word on a check list. */
public enum HandoverOutcome {
    /** The car leaves. */
    DELIVER,
    /** It goes back to be put right. */
    SEND_BACK
}

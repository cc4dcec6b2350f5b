package headertank.app.gate;

/** Where a job stands, told by what is to be done next; computed in the view {@code job_stage}, and by {@link Standing}. */
public enum Stage {
    /** The car is known, its cooling is not. */
    TO_DESCRIBE,
    /** Its newest revision has not been rated for this job, or the rating is out of date. */
    TO_RATE,
    /** The check list has sent the car back, and nobody has said that it is put right. */
    SENT_BACK,
    /** A fault is open. */
    FAULT_OPEN,
    /** Rated; nobody has signed. */
    TO_SIGN,
    /** Signed: it does not leave. */
    STAYS,
    /** Signed: it may leave once its check list is gone through and decided. */
    TO_GO_THROUGH,
    /** Signed, its list decided, no fault open: it may leave. */
    READY,
    /** Waits for something, as somebody has said. */
    PAUSED,
    /** The customer has the car. */
    HANDED_OVER,
    /** Nothing more is done. */
    CALLED_OFF;

    /** Whether nothing more is to be done. */
    public boolean isClosed() {
        return this == HANDED_OVER || this == CALLED_OFF;
    }
}

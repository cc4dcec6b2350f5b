package headertank.app.job;

/** Where a job stands; computed in the view {@code job_stage}, except for a pause and the end. */
public enum JobStage {
    /** The car is known, its cooling is not. */
    TO_DESCRIBE,
    /** Its newest revision has not been rated for this job. */
    TO_RATE,
    /** Rated; nobody has signed. */
    TO_SIGN,
    /** Signed: it may leave. */
    READY,
    /** Signed: it does not leave. */
    STAYS,
    /** Signed, but the check list for handing over sends it back. */
    SENT_BACK,
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

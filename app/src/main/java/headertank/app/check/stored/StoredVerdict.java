package headertank.app.check.stored;

/** The verdict of a stored check, the best first. */
public enum StoredVerdict {
    GO,
    GO_WITH_CONDITIONS,
    NO_GO
}

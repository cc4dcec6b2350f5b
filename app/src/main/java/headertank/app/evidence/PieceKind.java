package headertank.app.evidence;

/** Kinds of evidence that a shop keeps; their names are stored. */
public enum PieceKind {
    /** A log that is kept. */
    LOG,
    /** What a gauge showed once it stood still. */
    SETTLED
}

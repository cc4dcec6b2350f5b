package headertank.app.gate;

/** Why a car may not leave; the sentences are in the message files, {@code gate.obstacle.}. */
public enum Obstacle {
    NOT_DESCRIBED,
    NOT_RATED,
    NOT_SIGNED,
    SIGNED_TO_STAY,
    SENT_BACK,
    FAULT_OPEN,
    LIST_UNDECIDED
}

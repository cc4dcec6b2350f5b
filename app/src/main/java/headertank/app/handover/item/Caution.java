package headertank.app.handover.item;

/** What can hurt somebody at an item; the words are in the message files. */
public enum Caution {
    HOT_SYSTEM,
    PRESSURE,
    FANS,
    BELT,
    BURN,
    FUMES,
    ELECTRIC
}

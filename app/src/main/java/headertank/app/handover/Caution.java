package headertank.app.handover;

/** What can hurt somebody at an item; the words are in the message files. */
enum Caution {
    HOT_SYSTEM,
    PRESSURE,
    FANS,
    BELT,
    BURN,
    FUMES,
    ELECTRIC
}

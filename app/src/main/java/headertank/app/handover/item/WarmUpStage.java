package headertank.app.handover.item;

/** When in the work an item has its turn. */
public enum WarmUpStage {
    /** Engine off and cold. */
    COLD,
    /** From the first start until the fans have started. */
    WARMING,
    /** Hot, idling. */
    HOT,
    /** Engine off again. */
    AFTER
}

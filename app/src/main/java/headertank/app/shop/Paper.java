package headertank.app.shop;

/** The paper in the shop's printer. */
public enum Paper {
    /** 210 mm by 297 mm, ISO 216. */
    A4,
    /** 8.5 in by 11 in. */
    LETTER
}

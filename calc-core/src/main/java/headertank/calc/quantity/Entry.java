package headertank.calc.quantity;

/** What somebody stated for one field: a number or a choice, with its provenance. */
public sealed interface Entry permits Stated, Chosen {

    /** Two stated numbers closer than this share are the same: it absorbs unit conversion, not a change of a part. */
    double SAME_SHARE = 1e-9;

    /** @return where it comes from */
    Provenance from();

    /** @return whether two entries, either of them possibly {@code null}, state the same value, wherever it comes from */
    static boolean sameValue(Entry a, Entry b) {
        if (a instanceof Stated x && b instanceof Stated y) {
            return Math.abs(x.si() - y.si()) <= SAME_SHARE * Math.max(Math.abs(x.si()), Math.abs(y.si()));
        }
        return a instanceof Chosen x && b instanceof Chosen y && x.token().equals(y.token());
    }
}

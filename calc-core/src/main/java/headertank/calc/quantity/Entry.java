package headertank.calc.quantity;

/** What somebody stated for one field: a number or a choice, with its provenance. */
public sealed interface Entry permits Stated, Chosen {

    /** @return where it comes from */
    Provenance from();
}

package headertank.calc.quantity;

/**
 * Where a value comes from, best first. The provenance chooses the default spread of a value (see {@link Spread}).
 */
public enum Provenance {
    /** Somebody measured it on this car or this part. */
    MEASURED,
    /** The maker's technical document for this part says so. */
    DATASHEET,
    /** An advertisement, a box or a product page says so. */
    ADVERTISED,
    /** A person's estimate. */
    GUESSED
}

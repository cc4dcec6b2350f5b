package headertank.calc;

/** Version of calc-core, stored with every rating. */
public final class Version {

    /**
     * Semantic version. A change of numbers beyond the tolerance of the published checks raises at least the minor
     * version.
     */
    public static final String CALC_CORE = "0.1.0";

    private Version() {}
}

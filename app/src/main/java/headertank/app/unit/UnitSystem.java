package headertank.app.unit;

/** What a shop thinks in: decides what a bare number means and how values are shown. */
public enum UnitSystem {
    METRIC,
    US
}

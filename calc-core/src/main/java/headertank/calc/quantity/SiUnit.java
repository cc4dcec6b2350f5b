package headertank.calc.quantity;

/** The SI units in which the fields of a build are stated. */
public enum SiUnit {
    /** A pure number or a share of one. */
    ONE("-"),
    /** A whole number of things. */
    COUNT("-"),
    METRE("m"),
    SQUARE_METRE("m2"),
    CUBIC_METRE("m3"),
    CUBIC_METRE_PER_SECOND("m3/s"),
    KILOGRAM("kg"),
    /** A temperature. */
    KELVIN("K"),
    /** A difference of two temperatures. */
    KELVIN_DIFFERENCE("K"),
    /** A pressure difference, or a pressure above the surroundings. */
    PASCAL("Pa"),
    WATT("W"),
    WATT_PER_KELVIN("W/K"),
    SQUARE_METRE_KELVIN_PER_WATT("m2K/W"),
    AMPERE("A"),
    /** Revolutions per second. */
    PER_SECOND("1/s"),
    RADIAN("rad"),
    /** A time. */
    SECOND("s");

    private final String symbol;

    SiUnit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }
}

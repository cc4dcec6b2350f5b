package headertank.calc.quantity;

/**
 * What a figure in a {@link Message} is, so that whoever shows it can put it into another unit: a temperature of 10 K is
 * -263.15 C, a difference of 10 K is 18 F.
 */
public enum FigureKind {
    /** On a thermometer. */
    TEMPERATURE("K"),
    /** Between two thermometers. */
    TEMPERATURE_DIFFERENCE("K"),
    /** Above vacuum. */
    PRESSURE_ABSOLUTE("Pa"),
    /** Above the surroundings, as stamped on a cap. */
    PRESSURE_GAUGE("Pa"),
    /** Across a part. */
    PRESSURE_DIFFERENCE("Pa"),
    AIR_FLOW("m3/s"),
    LIQUID_FLOW("m3/s"),
    POWER("W"),
    CURRENT("A"),
    VOLTAGE("V"),
    /** Electric charge, in coulomb. */
    CHARGE("C"),
    LENGTH("m"),
    /** Above the sea. */
    ALTITUDE("m"),
    AREA("m2"),
    VOLUME("m3"),
    MASS("kg"),
    /** Heat flow for each kelvin of difference. */
    CONDUCTANCE("W/K"),
    /** Resistance of deposits, for a square metre. */
    FOULING("m2K/W"),
    ANGLE("rad"),
    SPEED("m/s"),
    TIME("s"),
    /** Of a shaft. */
    ROTATION("1/s"),
    /** A share of one, read as a percentage. */
    SHARE("-"),
    /** How likely something is, from 0 to 1. */
    PROBABILITY("-"),
    /** One quantity over another, or a factor. */
    RATIO("-"),
    /** A whole number of things. */
    COUNT("-");

    private final String siUnit;

    FigureKind(String siUnit) {
        this.siUnit = siUnit;
    }

    /** @return symbol of the SI unit in which such figures stand */
    public String siUnit() {
        return siUnit;
    }
}

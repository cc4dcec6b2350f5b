package headertank.calc.choice;

/** What cools the oil besides the sump. */
public enum OilCooling {
    /** Nothing. */
    NONE(false, false),
    /** A plate cooler in the coolant. */
    COOLANT(true, false),
    /** A cooler in the air. */
    AIR(false, true),
    /** A plate cooler and one in the air. */
    BOTH(true, true);

    private final boolean byCoolant;
    private final boolean byAir;

    OilCooling(boolean byCoolant, boolean byAir) {
        this.byCoolant = byCoolant;
        this.byAir = byAir;
    }

    /** @return whether there is a plate cooler between oil and coolant */
    public boolean byCoolant() {
        return byCoolant;
    }

    /** @return whether there is a cooler between oil and air */
    public boolean byAir() {
        return byAir;
    }
}

package headertank.calc.hood;

/**
 * What a hood is made of, through its thickness. Values from memory except where another source stands; the ranges that
 * they lie in are compared in the tests.
 */
public enum HoodMaterial {
    /** Carbon steel: DIN EN 12524:2000. */
    STEEL(50),
    /** Aluminium alloy: DIN EN 12524:2000. */
    ALUMINIUM(160),
    /** Glass fibre in epoxy: from memory. */
    GLASS_FIBRE(0.30),
    /** Carbon fibre in epoxy: from memory. */
    CARBON(0.7);

    private final double conductivityWPerMK;

    HoodMaterial(double conductivityWPerMK) {
        this.conductivityWPerMK = conductivityWPerMK;
    }

    /** @return thermal conductivity through the thickness [W/mK] */
    public double conductivityWPerMK() {
        return conductivityWPerMK;
    }
}

package headertank.calc.hood;

/**
 * What a hood is made of, through its thickness. Values from memory except where another source stands; the ranges that
 * they lie in are compared in the tests.
 */
public enum HoodMaterial {
    /** Carbon steel: DIN EN 12524:2000. */
    STEEL(50, 7800, 450),
    /** Aluminium alloy: DIN EN 12524:2000. */
    ALUMINIUM(160, 2800, 880),
    /** Glass fibre in epoxy: from memory. */
    GLASS_FIBRE(0.30, 1850, 1100),
    /** Carbon fibre in epoxy: from memory. */
    CARBON(0.7, 1550, 950);

    private final double conductivityWPerMK;
    private final double densityKgPerM3;
    private final double heatCapacityJPerKgK;

    HoodMaterial(double conductivityWPerMK, double densityKgPerM3, double heatCapacityJPerKgK) {
        this.conductivityWPerMK = conductivityWPerMK;
        this.densityKgPerM3 = densityKgPerM3;
        this.heatCapacityJPerKgK = heatCapacityJPerKgK;
    }

    /** @return thermal conductivity through the thickness [W/mK] */
    public double conductivityWPerMK() {
        return conductivityWPerMK;
    }

    /** @return density [kg/m3] */
    public double densityKgPerM3() {
        return densityKgPerM3;
    }

    /** @return specific heat capacity [J/kgK] */
    public double heatCapacityJPerKgK() {
        return heatCapacityJPerKgK;
    }
}

package headertank.calc.fluid;

/** Which glycol is mixed into the water, and what the mixing rules need to know of it. */
public enum GlycolKind {
    /** Plain water. */
    NONE(Double.NaN, Double.NaN),
    /** Ethylene glycol, C2H6O2. */
    ETHYLENE(0.062068, 1113.0),
    /** Propylene glycol, C3H8O2. */
    PROPYLENE(0.076095, 1036.0);

    /** Density of water at 20 C [kg/m3]; IAPWS-IF97. */
    private static final double WATER_20C = 998.2;

    private final double molarMassKgPerMol;
    private final double density20CKgPerM3;

    GlycolKind(double molarMassKgPerMol, double density20CKgPerM3) {
        this.molarMassKgPerMol = molarMassKgPerMol;
        this.density20CKgPerM3 = density20CKgPerM3;
    }

    /** @return molar mass from the sum formula [kg/mol]; NaN for plain water */
    double molarMassKgPerMol() {
        return molarMassKgPerMol;
    }

    /**
     * Mass fraction of a mixture that was filled by volume at 20 C: x = v rho_g / (v rho_g + (1-v) rho_w), with the
     * volumes measured before mixing; rho_g = 1113 (ethylene), 1036 kg/m3 (propylene), from memory.
     *
     * @param volumeFraction volume of pure glycol over the sum of both volumes, 0..1 [-]
     * @return mass fraction of glycol [-]; 0 for plain water
     */
    public double massFraction(double volumeFraction) {
        if (this == NONE) {
            return 0.0;
        }
        double glycol = volumeFraction * density20CKgPerM3;
        return glycol / (glycol + (1 - volumeFraction) * WATER_20C);
    }
}

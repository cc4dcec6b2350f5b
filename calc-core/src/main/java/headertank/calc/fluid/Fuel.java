package headertank.calc.fluid;

import org.hipparchus.util.FastMath;

/**
 * What the engine burns, and what that does to the heat in the coolant.
 *
 * <p>Coolant heat at equal released heat, against petrol with 10 % ethanol at lambda 0.90:
 * {@code K = (T_gf - T_w)/(T_gr - T_w) (m_f/m_r)^0.75} with the mean gas temperature {@code T_gr} = 1150 K
 * (1 - 0.40 max(0, 0.95 - lambda)), {@code T_gf = T_gr A_f/A_r}, {@code A = T_ad (1 - 0.40 max(0, 0.95 - lambda)) -
 * beta h_fg/(AFR lambda 1050)}, wall temperature {@code T_w} = 450 K, beta = 0.6 (share of the evaporative cooling
 * that the burnt gas still feels) and charge mass per released joule {@code m = (AFR lambda + 1)/(LHV min(1,
 * lambda))}. Derived for this project and weakly sourced: no open measurement of coolant heat at equal power by fuel was
 * found; {@link #coolantFactorSigma()} says how far it may be off. The factor holds at equal power: a tune that spends
 * the knock margin on more power spends the gain too.
 *
 * <p>Heating values and latent heats: US Department of Energy, Alternative Fuels Data Center, <i>Properties of
 * Fuels</i> (Btu/lb times 2326), blends mixed by mass; air-fuel ratios from the same table and from the reaction
 * equations. Adiabatic flame temperatures of the stoichiometric mixture at about 1 bar and full-load mixtures: from memory;
 * the flame temperature of plain petrol is not from a table but carries on the line through the ethanol and E10 figures.
 */
public enum Fuel {
    /** Petrol without ethanol. */
    PETROL_E0(43.44e6, 14.7, 348.9e3, 2277.0, 0.90, 0.01),
    /** Petrol with 10 % ethanol by volume; the reference of the coolant factor. */
    PETROL_E10(41.7e6, 14.1, 409.0e3, 2273.0, 0.90, 0.0),
    /** 85 % ethanol by volume; pump fuel may hold less in winter. */
    E85(29.3e6, 9.8, 839.0e3, 2248.0, 0.88, 0.03),
    /** Neat ethanol. */
    ETHANOL(26.9e6, 9.0, 921.0e3, 2238.0, 0.88, 0.03),
    /** Neat methanol. */
    METHANOL(20.1e6, 6.45, 1177.0e3, 2222.0, 0.84, 0.05),
    /** Diesel number 2. Its coolant factor is 1: the diesel engine class carries the difference. */
    DIESEL(42.8e6, 14.5, 233.0e3, 2300.0, 1.35, 0.0);

    private static final double WALL_K = 450.0;
    private static final double MEAN_GAS_K = 1150.0;
    private static final double EVAPORATIVE_SHARE = 0.6;
    private static final double CHARGE_CP_J_PER_KG_K = 1050.0;

    private final double lowerHeatingValueJPerKg;
    private final double stoichiometricAirFuelRatio;
    private final double latentHeatJPerKg;
    private final double flameTemperatureK;
    private final double fullLoadLambda;
    private final double coolantFactorSigma;

    Fuel(double lhv, double afr, double latent, double flameK, double lambda, double sigma) {
        lowerHeatingValueJPerKg = lhv;
        stoichiometricAirFuelRatio = afr;
        latentHeatJPerKg = latent;
        flameTemperatureK = flameK;
        fullLoadLambda = lambda;
        coolantFactorSigma = sigma;
    }

    /** @return lower heating value [J/kg] */
    public double lowerHeatingValueJPerKg() {
        return lowerHeatingValueJPerKg;
    }

    /** @return mass of air that just burns one mass of fuel [kg/kg] */
    public double stoichiometricAirFuelRatio() {
        return stoichiometricAirFuelRatio;
    }

    /** @return latent heat of evaporation [J/kg] */
    public double latentHeatJPerKg() {
        return latentHeatJPerKg;
    }

    /** @return usual air-fuel ratio at full load over the stoichiometric one [-]; from memory */
    public double fullLoadLambda() {
        return fullLoadLambda;
    }

    /** @return one standard deviation of {@link #coolantFactor()} [-]; modelling choice */
    public double coolantFactorSigma() {
        return coolantFactorSigma;
    }

    /** @return whether this fuel needs compression ignition */
    public boolean isDiesel() {
        return this == DIESEL;
    }

    /**
     * How far the fuel would cool its charge if all of it evaporated in the intake air: {@code h_fg/(AFR lambda 1050)}.
     *
     * @return temperature drop of the charge at the full-load mixture [K]; derived
     */
    public double chargeCoolingK() {
        return latentHeatJPerKg / (stoichiometricAirFuelRatio * fullLoadLambda * CHARGE_CP_J_PER_KG_K);
    }

    /**
     * @return heat to the coolant at equal released heat over that of {@link #PETROL_E10} [-], exactly 1 for E10 and
     *     diesel; derived, see the class comment
     */
    public double coolantFactor() {
        if (isDiesel() || this == PETROL_E10) {
            return 1.0;
        }
        double reference = MEAN_GAS_K * enrichment(PETROL_E10.fullLoadLambda);
        double gas = reference * gasLevelK() / PETROL_E10.gasLevelK();
        double mass = chargePerReleasedJoule() / PETROL_E10.chargePerReleasedJoule();
        return (gas - WALL_K) / (reference - WALL_K) * FastMath.pow(mass, 0.75);
    }

    private double gasLevelK() {
        return flameTemperatureK * enrichment(fullLoadLambda) - EVAPORATIVE_SHARE * chargeCoolingK();
    }

    private double chargePerReleasedJoule() {
        return (stoichiometricAirFuelRatio * fullLoadLambda + 1)
                / (lowerHeatingValueJPerKg * Math.min(1, fullLoadLambda));
    }

    private static double enrichment(double lambda) {
        return 1 - 0.40 * Math.max(0, 0.95 - lambda);
    }
}

package headertank.calc.rating;

import headertank.calc.engine.EngineFactors;
import headertank.calc.radiator.RadiatorFactors;
import org.hipparchus.util.FastMath;

/**
 * How far each model may be off, as factors and offsets about its nominal answer. Sampling varies them; {@link #NOMINAL}
 * is the model as published.
 *
 * @param airSide factor on the air-side heat transfer coefficient [-]
 * @param airFriction factor on the air-side friction factor [-]
 * @param tubeSide factor on the tube-side heat transfer coefficient [-]
 * @param coolantHeat factor on the share of the released heat that reaches the coolant [-]
 * @param engineFriction factor on engine friction [-]
 * @param fuelHeat factor on the influence of the fuel on wall heat [-]
 * @param airLosses factor on the loss coefficients of inlet and exit [-]
 * @param inletPressureOffset offset of the inlet's pressure coefficient [-]
 * @param exitPressureOffset offset of the exit's pressure coefficient [-]
 * @param sealing factor on the sealing of the duct [-]
 * @param yawOffset offset of the factor by which sideslip reduces the ram pressure [-]
 * @param fanOverrun factor on the resistance of fans beyond free delivery [-]
 * @param circuit factor on the coolant circuit's resistances [-]
 * @param oilCoolers factor on the conductances between oil, coolant and air [-]
 * @param demand deviate of the operating points' demand, in standard deviations of each [-]
 * @param boilingOffsetK offset of the coolant's boiling point [K]
 * @param metalMass factor on the engine's heat capacity [-]
 * @param loadExponent offset of the exponent by which the wall share falls with load [-]
 */
public record ModelFactors(
        double airSide,
        double airFriction,
        double tubeSide,
        double coolantHeat,
        double engineFriction,
        double fuelHeat,
        double airLosses,
        double inletPressureOffset,
        double exitPressureOffset,
        double sealing,
        double yawOffset,
        double fanOverrun,
        double circuit,
        double oilCoolers,
        double demand,
        double boilingOffsetK,
        double metalMass,
        double loadExponent) {

    /** The models as published. */
    public static final ModelFactors NOMINAL = new ModelFactors(1, 1, 1, 1, 1, 1, 1, 0, 0, 1, 0, 1, 1, 1, 0, 0, 1, 0);

    /**
     * Spread of the engine's heat capacity at its displacement: mass 12 %, iron in place of aluminium 10 % (a volume of it holds
     * half as much again and is cast thinner), how far down the jacket reaches 12 %, as squares (modelling choices) [-].
     */
    private static final double METAL_SIGMA = 0.20;

    /** Number of factors. */
    public static final int COUNT = 18;

    /**
     * The same for a core whose maker's sheet or bench test was fitted:
     *
     * <pre>{@code
     * Resolved car = rater.resolve(build);
     * RadiatorSpec core = Plant.of(car).radiator().spec();
     * PerformanceSheet.Fit fit = new PerformanceSheet(coolant, points).fit(core, PerformanceSheet.Side.AIR);
     * Plant fitted = Plant.of(car, ModelFactors.NOMINAL.withRadiator(fit.factors()));
     * PointRating rated = PointRater.rate(fitted, point);
     * }</pre>
     *
     * @param fitted factors of the radiator
     * @return these factors times the fitted ones
     */
    public ModelFactors withRadiator(RadiatorFactors fitted) {
        return new ModelFactors(
                airSide * fitted.airSide(),
                airFriction * fitted.airFriction(),
                tubeSide * fitted.tubeSide(),
                coolantHeat,
                engineFriction,
                fuelHeat,
                airLosses,
                inletPressureOffset,
                exitPressureOffset,
                sealing,
                yawOffset,
                fanOverrun,
                circuit,
                oilCoolers,
                demand,
                boilingOffsetK,
                metalMass,
                loadExponent);
    }

    /**
     * One standard deviation of the factors that depend on the car; log-normal shares.
     *
     * @param airSide of the air-side coefficient [-]
     * @param airFriction of the air-side friction [-]
     * @param tubeSide of the tube-side coefficient, coolant properties included [-]
     * @param coolantHeat of the coolant's share of the heat, by engine class [-]
     * @param fuelHeat of the fuel's influence [-]
     * @param boilingK of the boiling point [K]
     */
    public record Sigmas(
            double airSide,
            double airFriction,
            double tubeSide,
            double coolantHeat,
            double fuelHeat,
            double boilingK) {}

    /**
     * @param z one standard normal deviate per factor, in the order of the components
     * @param sigma standard deviations of the factors that depend on the car
     * @return the factors at these deviates; the other standard deviations are modelling choices
     */
    public static ModelFactors at(double[] z, Sigmas sigma) {
        return new ModelFactors(
                FastMath.exp(sigma.airSide() * z[0]),
                FastMath.exp(sigma.airFriction() * z[1]),
                FastMath.exp(sigma.tubeSide() * z[2]),
                FastMath.exp(sigma.coolantHeat() * z[3]),
                FastMath.exp(0.10 * z[4]),
                FastMath.exp(sigma.fuelHeat() * z[5]),
                FastMath.exp(0.25 * z[6]),
                0.08 * z[7],
                0.10 * z[8],
                FastMath.exp(0.06 * z[9]),
                0.15 * z[10],
                FastMath.exp(0.40 * z[11]),
                FastMath.exp(0.30 * z[12]),
                FastMath.exp(0.25 * z[13]),
                z[14],
                sigma.boilingK() * z[15],
                FastMath.exp(METAL_SIGMA * z[16]),
                EngineFactors.LOAD_EXPONENT_SIGMA * z[17]);
    }
}

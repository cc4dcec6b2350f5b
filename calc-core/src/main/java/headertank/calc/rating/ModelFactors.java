package headertank.calc.rating;

import headertank.calc.radiator.RadiatorFactors;

/**
 * How far each model may be off, as factors and offsets about its nominal answer. {@link #NOMINAL} is the model as
 * published; {@code uncertainty.ModelSpread} varies them.
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
}

package headertank.calc.rating;

import headertank.calc.engine.EngineFactors;
import headertank.calc.radiator.RadiatorFactors;

/**
 * How far each model may be off, as factors and offsets about its nominal answer. {@link #NOMINAL} is the model as
 * published; {@code uncertainty.ModelSpread} varies them.
 *
 * @param radiator on the core's correlations
 * @param engine on what the engine gives to its coolant
 * @param air on the air's way
 * @param liquid on coolant and oil
 * @param demand deviate of the operating points' demand, in standard deviations of each [-]
 * @param metalMass factor on the engine's heat capacity [-]
 */
public record ModelFactors(
        RadiatorFactors radiator, EngineFactors engine, AirWay air, Liquid liquid, double demand, double metalMass) {

    /** The models as published. */
    public static final ModelFactors NOMINAL =
            new ModelFactors(RadiatorFactors.NOMINAL, EngineFactors.NOMINAL, AirWay.NOMINAL, new Liquid(1, 1, 0), 0, 1);

    /**
     * The air's way through the car.
     *
     * @param losses factor on the loss coefficients of inlet and exit [-]
     * @param inletPressureOffset offset of the inlet's pressure coefficient [-]
     * @param exitPressureOffset offset of the exit's pressure coefficient [-]
     * @param sealing factor on the sealing of the duct [-]
     * @param yawOffset offset of the factor by which sideslip reduces the ram pressure [-]
     * @param fanOverrun factor on the resistance of fans beyond free delivery [-]
     */
    public record AirWay(
            double losses,
            double inletPressureOffset,
            double exitPressureOffset,
            double sealing,
            double yawOffset,
            double fanOverrun) {

        /** As specified. */
        public static final AirWay NOMINAL = new AirWay(1, 0, 0, 1, 0, 1);
    }

    /**
     * Coolant and oil.
     *
     * @param circuit factor on the coolant circuit's resistances [-]
     * @param oilCoolers factor on the conductances between oil, coolant and air [-]
     * @param boilingOffsetK offset of the coolant's boiling point [K]
     */
    public record Liquid(double circuit, double oilCoolers, double boilingOffsetK) {}

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
        RadiatorFactors both = new RadiatorFactors(
                radiator.airSide() * fitted.airSide(),
                radiator.airFriction() * fitted.airFriction(),
                radiator.tubeSide() * fitted.tubeSide());
        return new ModelFactors(both, engine, air, liquid, demand, metalMass);
    }
}

package headertank.calc.rating;

import headertank.calc.carspec.Learned;
import headertank.calc.carspec.ModelFactor;
import headertank.calc.engine.EngineFactors;
import headertank.calc.radiator.RadiatorFactors;
import org.hipparchus.util.FastMath;

/**
 * How far each model may be off, as factors and offsets about its nominal answer. {@link #NOMINAL} is the model as
 * published; {@code uncertainty.ModelSpread} varies them.
 *
 * @param radiator on the core's correlations
 * @param engine on what the engine gives to its coolant
 * @param air on the air's way
 * @param liquid on coolant and oil
 * @param demand deviate of the operating points' demand, in standard deviations of each [-]
 * @param metal on the engine as a body
 * @param gaugeOffsetK offset of what the gauge's sensor shows [K]
 */
public record ModelFactors(
        RadiatorFactors radiator,
        EngineFactors engine,
        AirWay air,
        Liquid liquid,
        double demand,
        Metal metal,
        double gaugeOffsetK) {

    /** The models as published. */
    public static final ModelFactors NOMINAL = new ModelFactors(
            RadiatorFactors.NOMINAL,
            EngineFactors.NOMINAL,
            AirWay.NOMINAL,
            new Liquid(1, 1, 0, 1, 1),
            0,
            new Metal(1, 1, 1, 1, 1, 1),
            0);

    /**
     * The air's way through the car.
     *
     * @param losses factor on the loss coefficients of inlet and exit [-]
     * @param inletPressureOffset offset of the inlet's pressure coefficient [-]
     * @param exitPressureOffset offset of the exit's pressure coefficient [-]
     * @param sealing factor on the sealing of the duct [-]
     * @param yawOffset offset of the factor by which sideslip reduces the ram pressure [-]
     * @param fanOverrun factor on the resistance of fans beyond free delivery [-]
     * @param standing factor on what a core loses where no air is driven through it [-]
     */
    public record AirWay(
            double losses,
            double inletPressureOffset,
            double exitPressureOffset,
            double sealing,
            double yawOffset,
            double fanOverrun,
            double standing) {

        /** As specified. */
        public static final AirWay NOMINAL = new AirWay(1, 0, 0, 1, 0, 1, 1);
    }

    /**
     * The engine as a body.
     *
     * @param mass factor on its heat capacity [-]
     * @param charge factor on its volumetric efficiency [-]
     * @param surface factor on what it gives off to the air around it [-]
     * @param contact factor on the conductance between metal and coolant [-]
     * @param oilMass factor on the heat capacity that follows the oil [-]
     * @param radiatorMass factor on the heat capacity of radiator, hoses and their coolant [-]
     */
    public record Metal(
            double mass, double charge, double surface, double contact, double oilMass, double radiatorMass) {}

    /**
     * Coolant and oil.
     *
     * @param circuit factor on the coolant circuit's resistances [-]
     * @param oilCoolers factor on the conductances between oil, coolant and air [-]
     * @param boilingOffsetK offset of the coolant's boiling point [K]
     * @param leak factor on what a shut thermostat leaks [-]
     * @param opens factor on the width over which the thermostat opens [-]
     */
    public record Liquid(double circuit, double oilCoolers, double boilingOffsetK, double leak, double opens) {}

    /** @return the factors at these deviations, one for each {@link ModelFactor}: the logarithm of a factor, an offset as it is */
    public static ModelFactors at(double[] deviations) {
        return new ModelFactors(
                new RadiatorFactors(
                        factor(deviations, ModelFactor.AIR_SIDE),
                        factor(deviations, ModelFactor.AIR_FRICTION),
                        factor(deviations, ModelFactor.TUBE_SIDE)),
                new EngineFactors(
                        factor(deviations, ModelFactor.COOLANT_HEAT),
                        factor(deviations, ModelFactor.ENGINE_FRICTION),
                        factor(deviations, ModelFactor.FUEL_HEAT),
                        deviations[ModelFactor.LOAD_EXPONENT.ordinal()]),
                new AirWay(
                        factor(deviations, ModelFactor.AIR_LOSSES),
                        deviations[ModelFactor.INLET_PRESSURE.ordinal()],
                        deviations[ModelFactor.EXIT_PRESSURE.ordinal()],
                        factor(deviations, ModelFactor.SEALING),
                        deviations[ModelFactor.SIDESLIP.ordinal()],
                        factor(deviations, ModelFactor.FAN_OVERRUN),
                        factor(deviations, ModelFactor.STANDING_CORE)),
                new Liquid(
                        factor(deviations, ModelFactor.CIRCUIT),
                        factor(deviations, ModelFactor.OIL_COOLERS),
                        deviations[ModelFactor.BOILING.ordinal()],
                        factor(deviations, ModelFactor.LEAK),
                        factor(deviations, ModelFactor.THERMOSTAT_WIDTH)),
                deviations[ModelFactor.DEMAND.ordinal()],
                new Metal(
                        factor(deviations, ModelFactor.METAL_MASS),
                        factor(deviations, ModelFactor.CHARGE),
                        factor(deviations, ModelFactor.SURFACE),
                        factor(deviations, ModelFactor.CONTACT),
                        factor(deviations, ModelFactor.OIL_MASS),
                        factor(deviations, ModelFactor.RADIATOR_MASS)),
                deviations[ModelFactor.GAUGE.ordinal()]);
    }

    /** @return the factors that were learned of a car; those as published where nothing was */
    static ModelFactors of(Learned learned) {
        return learned.factors().isEmpty() ? NOMINAL : at(learned.deviations());
    }

    private static double factor(double[] deviations, ModelFactor factor) {
        return FastMath.exp(deviations[factor.ordinal()]);
    }
}

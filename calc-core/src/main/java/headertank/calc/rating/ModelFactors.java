package headertank.calc.rating;

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
        double metalMass) {

    /** The models as published. */
    public static final ModelFactors NOMINAL = new ModelFactors(1, 1, 1, 1, 1, 1, 1, 0, 0, 1, 0, 1, 1, 1, 0, 0, 1);

    /** Number of factors. */
    public static final int COUNT = 17;

    /**
     * @param z one standard normal deviate per factor, in the order of the components
     * @param engineShareSigma standard deviation of the coolant's heat share, by engine class [-]
     * @param fuelSigma standard deviation of the fuel's influence [-]
     * @param widening factor on the standard deviations of the core's models, for geometry outside their range [-]
     * @return the factors at these deviates. Standard deviations: modelling choice, after what the authors of each
     *     correlation state where they do (louvred fins within 15 % for about 90 % of their data, from memory)
     */
    public static ModelFactors at(double[] z, double engineShareSigma, double fuelSigma, double widening) {
        return new ModelFactors(
                Math.exp(0.10 * widening * z[0]),
                Math.exp(0.134 * widening * z[1]),
                Math.exp(0.15 * z[2]),
                Math.exp(engineShareSigma * z[3]),
                Math.exp(0.10 * z[4]),
                Math.exp(fuelSigma * z[5]),
                Math.exp(0.25 * z[6]),
                0.08 * z[7],
                0.10 * z[8],
                Math.exp(0.06 * z[9]),
                0.15 * z[10],
                Math.exp(0.40 * z[11]),
                Math.exp(0.30 * z[12]),
                Math.exp(0.25 * z[13]),
                z[14],
                1.0 * z[15],
                Math.exp(0.25 * z[16]));
    }
}

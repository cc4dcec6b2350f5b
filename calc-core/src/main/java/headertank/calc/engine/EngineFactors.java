package headertank.calc.engine;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * Factors on what is uncertain in the engine's heat, for sampling and for calibration with a log. One means the class
 * default. Each lies in 0.2 to 5, else {@link OutOfRangeException}.
 *
 * @param coolantShare factor on the wall share phi_g [-]; one standard deviation is {@link EngineClass#wallShareSigma()}
 * @param friction factor on friction power [-]; one standard deviation 10 %, modelling choice
 * @param fuelHeat factor on the fuel's coolant factor K_fuel [-]
 * @param loadExponent offset of the exponent by which the wall share falls with load [-], -0.25 to 0.25; one standard
 *     deviation {@link #LOAD_EXPONENT_SIGMA}
 */
public record EngineFactors(double coolantShare, double friction, double fuelHeat, double loadExponent) {

    /**
     * One standard deviation of the exponent [-]: heat to the walls grows with the gas flow to the power 0.7 (W. J. D. Annand,
     * 1963), 0.75 (C. F. Taylor and T. Y. Toong, 1957), 0.8 (G. Woschni, 1967; G. F. Hohenberg, 1979), all from memory; these
     * spread by 0.05, and 0.06 allows for spark and residual gas that change with load (derived). It leaves the spread of the
     * wall share as it is at full load, adds 14 % at a tenth of it and 24 % at idle.
     */
    public static final double LOAD_EXPONENT_SIGMA = 0.06;

    private static final Range ALLOWED = Range.of(0.2, 5);

    /** All factors one. */
    public static final EngineFactors NOMINAL = new EngineFactors(1, 1, 1, 0);

    public EngineFactors {
        OutOfRangeException.require("coolantShare", coolantShare, ALLOWED);
        OutOfRangeException.require("friction", friction, ALLOWED);
        OutOfRangeException.require("fuelHeat", fuelHeat, ALLOWED);
        OutOfRangeException.require("loadExponent", loadExponent, -0.25, 0.25);
    }
}

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
 */
public record EngineFactors(double coolantShare, double friction, double fuelHeat) {

    private static final Range ALLOWED = Range.of(0.2, 5);

    /** All factors one. */
    public static final EngineFactors NOMINAL = new EngineFactors(1, 1, 1);

    public EngineFactors {
        OutOfRangeException.require("coolantShare", coolantShare, ALLOWED);
        OutOfRangeException.require("friction", friction, ALLOWED);
        OutOfRangeException.require("fuelHeat", fuelHeat, ALLOWED);
    }
}

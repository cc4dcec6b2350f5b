package headertank.calc.air;

import headertank.calc.choice.AirExit;
import headertank.calc.choice.Ducting;
import headertank.calc.quantity.Range;

/**
 * Coefficients of a car's way of the air for the ducts and the exit that somebody sees on it. All are guessed for this
 * project, none is measured: a pressure tap before the core and one behind it replace them. How far they may be off stands in
 * {@link AirPathSpec}.
 */
public final class TypicalAirPath {

    /** Loss of the inlet opening on its sealed area, K_in [-]: between a rounded and a sharp edge with a grille; guessed. */
    public static final double INLET_LOSS = 0.8;

    /** Loss of the way out behind the core on its free area, K_ex [-]: one jet and a bend past the engine; guessed. */
    public static final double EXIT_LOSS = 1.6;

    /** Inlet pressure coefficients that a sampled car may have [-]; modelling choice. */
    public static final Range INLET_PRESSURE = Range.of(0.2, 1);

    /** Exit pressure coefficients that a sampled car may have [-]; modelling choice. */
    public static final Range EXIT_PRESSURE = Range.of(-0.8, 0.6);

    /** Sealing that a sampled car may have [-]; modelling choice. */
    public static final Range SEALING = Range.of(0.3, 1);

    private TypicalAirPath() {}

    /** @return pressure before the inlet over dynamic pressure, Cp_in [-]; guessed: stagnation less what spills past the core */
    public static double inletPressureCoefficient(Ducting duct) {
        return switch (duct) {
            case SEALED -> 0.85;
            case PARTLY -> 0.80;
            case OPEN -> 0.75;
        };
    }

    /** @return share of the inlet area whose air reaches the core [-]; guessed */
    public static double sealing(Ducting duct) {
        return switch (duct) {
            case SEALED -> 0.95;
            case PARTLY -> 0.90;
            case OPEN -> 0.75;
        };
    }

    /** @return share of hot air drawn in again by a car at rest, r_0 [-]; guessed, 50 % */
    public static double recirculationAtRest(Ducting duct) {
        return switch (duct) {
            case SEALED, PARTLY -> 0.08;
            case OPEN -> 0.20;
        };
    }

    /**
     * @param exit where the air leaves
     * @param floored whether a floor or splitter below the front draws on the air under the car, as on a track car
     * @return pressure at the exit over dynamic pressure, Cp_ex [-]; guessed
     */
    public static double exitPressureCoefficient(AirExit exit, boolean floored) {
        return switch (exit) {
            case HOOD_VENT -> -0.30;
            case NO_WAY_OUT -> 0.10;
            case UNDER_CAR -> floored ? -0.10 : 0.0;
        };
    }
}

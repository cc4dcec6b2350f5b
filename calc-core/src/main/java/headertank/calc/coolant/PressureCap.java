package headertank.calc.coolant;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * A pressure cap: p = p_atm + factor * gauge, at the tank that carries it.
 *
 * <p>The pressure is there only when the system is sealed, full and hot.
 *
 * @param gaugePa opening pressure on the label, above the atmosphere, 0 to 300 kPa, outside: typed error [Pa]
 * @param agedFactor share of it that the cap still holds, 0 to 1 [-]
 */
public record PressureCap(double gaugePa, double agedFactor) {

    /** What an aged cap is taken to hold of its label [-]; modelling choice, one standard deviation 15 %. */
    public static final double AGED = 0.85;

    public PressureCap {
        OutOfRangeException.require("cap.gaugePa", gaugePa, Range.of(0, 300e3));
        OutOfRangeException.require("cap.agedFactor", agedFactor, Range.of(0, 1));
    }

    /** @return a cap that holds what its label says [Pa] */
    public static PressureCap fresh(double gaugePa) {
        return new PressureCap(gaugePa, 1.0);
    }

    /** @return a cap of unknown age that holds {@link #AGED} of its label [Pa] */
    public static PressureCap aged(double gaugePa) {
        return new PressureCap(gaugePa, AGED);
    }

    /** @return gauge pressure that it holds [Pa] */
    public double heldGaugePa() {
        return gaugePa * agedFactor;
    }

    /**
     * @param atmospherePa pressure of the air outside [Pa]
     * @return absolute pressure in the tank with the cap [Pa]
     */
    public double absolutePa(double atmospherePa) {
        return atmospherePa + heldGaugePa();
    }
}

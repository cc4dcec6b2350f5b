package headertank.calc.coolant;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * A pressure cap: p = p_atm + share * gauge, at the tank that carries it.
 *
 * <p>The pressure is there only when the system is sealed, full and hot.
 *
 * @param gaugePa opening pressure on the label, above the atmosphere, 0 to 300 kPa, outside: typed error [Pa]
 * @param heldShare share of it that the cap still holds, 0 to 1 [-]
 */
public record PressureCap(double gaugePa, double heldShare) {

    public PressureCap {
        OutOfRangeException.require("cap.gaugePa", gaugePa, Range.of(0, 300e3));
        OutOfRangeException.require("cap.heldShare", heldShare, Range.of(0, 1));
    }

    /** @return gauge pressure that it holds [Pa] */
    public double heldGaugePa() {
        return gaugePa * heldShare;
    }

    /**
     * @param atmospherePa pressure of the air outside [Pa]
     * @return absolute pressure in the tank with the cap [Pa]
     */
    public double absolutePa(double atmospherePa) {
        return atmospherePa + heldGaugePa();
    }
}

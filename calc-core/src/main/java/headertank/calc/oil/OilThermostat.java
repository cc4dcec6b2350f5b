package headertank.calc.oil;

import headertank.calc.quantity.OutOfRangeException;

/**
 * A thermostat in the oil's way to its air cooler: shut up to one temperature, open from another, straight between. Opening
 * at 80 and open at 90 deg C is common practice, no source; the straight line and the absence of a lag are modelling
 * choices.
 *
 * @param openingK begins to open, 300 to 420, outside: typed error [K]
 * @param fullOpenK fully open, 1 to 40 above, outside: typed error [K]
 * @param governedShare share of the conductance to air that needs it open, 0 to 1, outside: typed error [-]
 */
public record OilThermostat(double openingK, double fullOpenK, double governedShare) {

    /** Usual opening, 80 deg C [K]; common practice, no source. */
    public static final double USUAL_OPENING_K = 353.15;

    /** Usual distance from there to fully open [K]; common practice, no source. */
    public static final double USUAL_WIDTH_K = 10;

    /** No thermostat: the cooler always works. */
    public static final OilThermostat NONE = usual(0);

    public OilThermostat {
        OutOfRangeException.require("oilThermostat.openingK", openingK, 300, 420);
        OutOfRangeException.require("oilThermostat.fullOpenK", fullOpenK, openingK + 1, openingK + 40);
        OutOfRangeException.require("oilThermostat.governedShare", governedShare, 0, 1);
    }

    /** @return one of the usual temperatures that governs this share of the conductance to air [-] */
    public static OilThermostat usual(double governedShare) {
        return new OilThermostat(USUAL_OPENING_K, USUAL_OPENING_K + USUAL_WIDTH_K, governedShare);
    }

    /** @return share of the conductance to air that works at this oil temperature [K]; 1 when open [-] */
    public double openShare(double oilK) {
        double z = Math.max(0, Math.min(1, (oilK - openingK) / (fullOpenK - openingK)));
        return 1 - governedShare * (1 - z);
    }
}

package headertank.calc.oil;

import headertank.calc.quantity.OutOfRangeException;

/**
 * The two ways by which heat leaves the oil, at one state of a car; {@link OilCoolers} says how they follow from it.
 *
 * @param toCoolantWPerK conductance from oil to coolant, 0.5 to 1e5, outside: typed error [W/K]
 * @param toAirWPerK conductance from sump and air cooler to the air, its thermostat open, 0 to 1e5, outside: typed error [W/K]
 * @param thermostat the oil thermostat and what it governs
 */
public record OilSpec(double toCoolantWPerK, double toAirWPerK, OilThermostat thermostat) {

    public OilSpec {
        OutOfRangeException.require("oil.toCoolantWPerK", toCoolantWPerK, 0.5, 1e5);
        OutOfRangeException.require("oil.toAirWPerK", toAirWPerK, 0, 1e5);
        if (thermostat == null) {
            throw new IllegalArgumentException("an oil system without thermostat has OilThermostat.NONE");
        }
    }
}

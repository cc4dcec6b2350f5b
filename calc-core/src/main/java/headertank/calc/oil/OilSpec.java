package headertank.calc.oil;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * The two ways by which heat leaves the oil.
 *
 * <p>Guessed with one standard deviation of 25 % (modelling choice): to the coolant 80 W/K through the block alone, 150 to
 * 300 with a plate cooler; to the air at 30 m/s 25 for a bare sump, 180 to 400 with an oil-to-air cooler.
 *
 * @param coolerToCoolantWPerK conductance from oil to coolant, 1 to 5000, outside: typed error [W/K]
 * @param toAirAt30MPerSWPerK conductance from sump and air cooler to the air at 30 m/s, 0 to 5000, outside: typed error
 *     [W/K]
 * @param thermostat the oil thermostat and what it governs
 */
public record OilSpec(double coolerToCoolantWPerK, double toAirAt30MPerSWPerK, OilThermostat thermostat) {

    public OilSpec {
        OutOfRangeException.require("oil.coolerToCoolantWPerK", coolerToCoolantWPerK, Range.of(1, 5000));
        OutOfRangeException.require("oil.toAirAt30MPerSWPerK", toAirAt30MPerSWPerK, Range.of(0, 5000));
        if (thermostat == null) {
            throw new IllegalArgumentException("an oil system without thermostat has OilThermostat.NONE");
        }
    }

    /** Coolers without a thermostat. */
    public OilSpec(double coolerToCoolantWPerK, double toAirAt30MPerSWPerK) {
        this(coolerToCoolantWPerK, toAirAt30MPerSWPerK, OilThermostat.NONE);
    }

    /** Neither a plate cooler nor an air cooler: block and sump only. */
    public static final OilSpec NO_COOLER = new OilSpec(80, 25);
}

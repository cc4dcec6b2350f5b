package headertank.calc.coolant;

import headertank.calc.choice.BypassState;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * A thermostat, or the empty housing where one was.
 *
 * @param fitted whether there is one
 * @param openingK coolant temperature at which it begins to open, 300 to 400 K [K]
 * @param fullOpenK coolant temperature at which it is fully open, 1 to 40 K above [K]
 * @param bypass what the bypass does
 * @param leakLift share of the full area through which it leaks when shut, 0.001 to 0.05 [-]
 */
public record ThermostatSpec(boolean fitted, double openingK, double fullOpenK, BypassState bypass, double leakLift) {

    /** Usual width between opening and fully open [K]; common practice, and within 2 K of what two makers ask (published check). */
    public static final double DEFAULT_WIDTH_K = 12.0;

    private static final Range OPENING = Range.of(300, 400);
    private static final Range WIDTH = Range.of(1, 40);

    /** How little and how much a shut thermostat may leak [-]. */
    public static final Range LEAK = Range.of(0.001, 0.05);

    /** A thermostat that leaks when shut as most do. */
    public ThermostatSpec(boolean fitted, double openingK, double fullOpenK, BypassState bypass) {
        this(fitted, openingK, fullOpenK, bypass, Thermostat.LEAK_LIFT);
    }

    public ThermostatSpec {
        if (bypass == null) {
            throw new IllegalArgumentException("a thermostat housing needs the state of its bypass");
        }
        if (fitted) {
            OutOfRangeException.require("thermostat.openingK", openingK, OPENING);
            OutOfRangeException.require("thermostat.leakLift", leakLift, LEAK);
            OutOfRangeException.require(
                    "thermostat.fullOpenK", fullOpenK, Range.of(openingK + WIDTH.min(), openingK + WIDTH.max()));
        }
    }

    /** @return a fitted thermostat of the usual width whose foot closes the bypass; opening temperature [K] */
    public static ThermostatSpec fitted(double openingK) {
        return new ThermostatSpec(true, openingK, openingK + DEFAULT_WIDTH_K, BypassState.CLOSES_WITH_LIFT);
    }

    /** @return an empty housing with this bypass; both temperatures are 0 and mean nothing */
    public static ThermostatSpec removed(BypassState bypass) {
        return new ThermostatSpec(false, 0, 0, bypass);
    }
}

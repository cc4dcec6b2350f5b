package headertank.calc.coolant;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * Pump, thermostat and the resistances of the rest, as multiples of the pump's own c = p0/Qmax^2.
 *
 * <p>The default ratios are guesses with one standard deviation of 30 % each: a modelling choice that a measured flow
 * replaces. Ratios from 0 to 1000, outside: typed error.
 *
 * @param pump the pump
 * @param thermostat the thermostat or its empty housing
 * @param blockRatio block and head, in series with everything [-]
 * @param hoseRatio hoses, in the radiator's branch [-]
 * @param thermostatRatio fully open thermostat, in the radiator's branch [-]
 * @param bypassRatio fully open bypass, above 0 [-]
 * @param emptyHousingRatio housing without thermostat: 0 for nothing, {@code thermostatRatio} for a restrictor plate [-]
 * @param restrictedAreaShare area of a restricted bypass over the open one, 0.01 to 1 [-]
 */
public record CircuitSpec(
        PumpSpec pump,
        ThermostatSpec thermostat,
        double blockRatio,
        double hoseRatio,
        double thermostatRatio,
        double bypassRatio,
        double emptyHousingRatio,
        double restrictedAreaShare) {

    /** Area share that a bypass closed by the thermostat's foot still has [-]; modelling choice. */
    public static final double CLOSED_BYPASS_LEAK = 0.02;

    private static final Range RATIO = Range.of(0, 1000);

    public CircuitSpec {
        OutOfRangeException.require("circuit.blockRatio", blockRatio, RATIO);
        OutOfRangeException.require("circuit.hoseRatio", hoseRatio, RATIO);
        OutOfRangeException.require("circuit.thermostatRatio", thermostatRatio, RATIO);
        OutOfRangeException.require("circuit.bypassRatio", bypassRatio, Range.of(1e-3, 1000));
        OutOfRangeException.require("circuit.emptyHousingRatio", emptyHousingRatio, RATIO);
        OutOfRangeException.require("circuit.restrictedAreaShare", restrictedAreaShare, Range.of(0.01, 1));
    }

    /** @return block 1.1 c, hoses 0.25 c, thermostat 0.35 c, bypass 6 c, restricted bypass a quarter of its area */
    public static CircuitSpec of(PumpSpec pump, ThermostatSpec thermostat) {
        return new CircuitSpec(pump, thermostat, 1.1, 0.25, 0.35, 6.0, 0.0, 0.25);
    }

    /**
     * The hose that an engine of this power usually has, to which the default ratio belongs: 34 mm up to 150 kW, 38 mm from
     * 250 kW, straight between them; modelling choice.
     *
     * @param ratedPowerW rated power [W]
     * @return inner diameter [m]
     */
    public static double usualHoseM(double ratedPowerW) {
        double share = Math.max(0, Math.min(1, (ratedPowerW - 150e3) / 100e3));
        return 0.034 + 0.004 * share;
    }

    /**
     * Resistance of thermostat or empty housing over c: ratio / s^2.
     *
     * @param lift s, below the leak taken as the leak; unused when no thermostat is fitted [-]
     * @return resistance over c [-]
     */
    double housingRatio(double lift) {
        if (!thermostat.fitted()) {
            return emptyHousingRatio;
        }
        double s = Math.max(lift, thermostat.leakLift());
        return thermostatRatio / (s * s);
    }

    /**
     * Resistance of the bypass over c: ratio / area share^2, infinite when blocked.
     *
     * @param lift s [-]
     * @return resistance over c [-]
     */
    double bypassRatio(double lift) {
        double area =
                switch (thermostat.bypass()) {
                    case CLOSES_WITH_LIFT ->
                        thermostat.fitted()
                                ? Math.max(1 - Math.max(lift, thermostat.leakLift()), CLOSED_BYPASS_LEAK)
                                : 1.0;
                    case OPEN -> 1.0;
                    case RESTRICTED -> restrictedAreaShare;
                    case BLOCKED -> 0.0;
                };
        return bypassRatio / (area * area);
    }
}

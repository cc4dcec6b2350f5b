package headertank.calc.electric;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Fan current against the alternator, and the voltage at which the two meet.
 *
 * <p>While the alternator keeps up, the system stands at 13.5 V. When it does not, the voltage falls, at most to 12.4 V where
 * the battery takes over. A brushed fan's speed goes with its voltage (N ~ V), its power with N^3, so its current with
 * V^2: I = I_13.5 (V/13.5)^2. The loop is closed exactly: V = 13.5 sqrt((supply - base) / I_13.5), cut to 12.4..13.5, and
 * what is still missing at 12.4 V comes from the battery. Voltages are common practice, no source; fan laws from memory;
 * the closure is derived. Fans feel it as speed, hence flow ~ N and pressure ~ N^2.
 *
 * @param supplyA what the alternator can deliver [A]
 * @param baseLoadA what the rest of the car draws [A]
 * @param fanA what the fans draw at the voltage that results [A]
 * @param startA base load and fans in the first second, at full voltage [A]
 * @param deficitA what the battery must add, 0 when nothing [A]
 * @param voltageV system voltage [V]
 * @param fanSpeedFactor fan speed over that at 13.5 V [-]
 */
public record ElectricBalance(
        double supplyA,
        double baseLoadA,
        double fanA,
        double startA,
        double deficitA,
        double voltageV,
        double fanSpeedFactor) {

    /** Voltage while charging [V]; common practice, no source. */
    public static final double CHARGING_V = 13.5;

    /** Voltage on the battery alone [V]; common practice, no source. */
    public static final double BATTERY_V = 12.4;

    /**
     * @param alternator the alternator and the base load
     * @param engineSpeedOverIdle engine speed over its idle speed, 0 to 50 [-]
     * @param fanRunningA running current of all fans together at full duty and 13.5 V, 0 to 500 [A]
     * @param fanDuty duty of the fans, 0 to 1 [-]
     * @param start how they are switched on
     * @return the balance; outside the ranges: typed error
     */
    public static ElectricBalance of(
            AlternatorSpec alternator, double engineSpeedOverIdle, double fanRunningA, double fanDuty, FanStart start) {
        double supply = alternator.outputA(engineSpeedOverIdle);
        double base = alternator.baseLoadA();
        double full = fanCurrentA(fanRunningA, fanDuty);
        double factor = fanSpeedFactor(supply - base, full);
        double fans = full * factor * factor;
        return new ElectricBalance(
                supply,
                base,
                fans,
                base + startA(full, start),
                Math.max(0, base + fans - supply),
                CHARGING_V * factor,
                factor);
    }

    /**
     * Terminal current of fans at part duty: I d^2, for a pulsed brushed motor (from memory, weak).
     *
     * @param fanRunningA running current at full duty, 0 to 500, outside: typed error [A]
     * @param fanDuty d, 0 to 1, outside: typed error [-]
     * @return current [A]
     */
    public static double fanCurrentA(double fanRunningA, double fanDuty) {
        OutOfRangeException.require("fanRunningA", fanRunningA, 0, 500);
        OutOfRangeException.require("fanDuty", fanDuty, 0, 1);
        return fanRunningA * fanDuty * fanDuty;
    }

    /** @return current to budget for the first second of these fans [A]; see {@link FanStart#startFactor} */
    public static double startA(double runningA, FanStart start) {
        return runningA * start.startFactor();
    }

    /**
     * @param forFansA what the alternator leaves to the fans, may be negative [A]
     * @param fansAtChargingA what they would draw at 13.5 V [A]
     * @return fan speed over that at 13.5 V, 12.4/13.5 to 1 [-]
     */
    public static double fanSpeedFactor(double forFansA, double fansAtChargingA) {
        double lowest = BATTERY_V / CHARGING_V;
        if (forFansA >= fansAtChargingA) {
            return 1.0;
        }
        if (forFansA <= lowest * lowest * fansAtChargingA) {
            return lowest;
        }
        return FastMath.sqrt(forFansA / fansAtChargingA);
    }

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        return List.of(
                new WorkingLine(WorkedQuantity.OUTPUT_OF_THE_ALTERNATOR, "I_alt", "A", supplyA, "modelling choice"),
                new WorkingLine(WorkedQuantity.BASE_LOAD, "I_base", "A", baseLoadA, "input"),
                new WorkingLine(
                        WorkedQuantity.CURRENT_OF_THE_FANS, "I_fan", "A", fanA, "I d^2 (V/13.5)^2, from memory"),
                new WorkingLine(
                        WorkedQuantity.CURRENT_WHEN_THEY_START, "I_start", "A", startA, "common practice, no source"),
                new WorkingLine(WorkedQuantity.FROM_THE_BATTERY, "I_def", "A", deficitA, "derived"),
                new WorkingLine(WorkedQuantity.VOLTAGE, "V", "V", voltageV, "derived"),
                new WorkingLine(WorkedQuantity.FAN_SPEED_LEFT, "N/N_13.5", "-", fanSpeedFactor, "N ~ V, from memory"));
    }
}

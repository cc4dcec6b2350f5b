package headertank.calc.result;

import headertank.calc.choice.SensorPlacement;
import headertank.calc.electric.ElectricBalance;
import java.util.List;

/**
 * What a schedule did to a car.
 *
 * @param peaks how hot it became
 * @param aboveLimit how long the coolant was above its limit
 * @param charge what the fans and the battery gave
 * @param fanStarts how often the fans started
 * @param energy what the books of the run say
 * @param trace the run, thinned for drawing; empty when none was asked for
 * @param settled where the coolant settled
 * @param window time outside the window that coolant is happy in
 * @param current electric load at its worst
 * @param hood air and panel at their hottest
 * @param sensors each place's sensor beside the true temperature in the head, in the order of the places
 * @param phases the run, phase by phase
 * @param numerics what the integration took
 */
public record RunResult(
        Peaks peaks,
        AboveLimit aboveLimit,
        Charge charge,
        int fanStarts,
        Energy energy,
        List<Sample> trace,
        Settled settled,
        Window window,
        Current current,
        Hood hood,
        List<SensorError> sensors,
        List<PhaseSummary> phases,
        Numerics numerics) {

    public RunResult {
        trace = List.copyOf(trace);
        sensors = List.copyOf(sensors);
        phases = List.copyOf(phases);
    }

    /** @return the sensor at this place beside the truth */
    public SensorError sensor(SensorPlacement place) {
        return sensors.get(place.ordinal());
    }

    /**
     * @param coolantK hottest coolant in the block, bulk [K]
     * @param coolantAtS when [s]
     * @param oilK hottest oil [K]
     * @param lowestBoilingMarginK smallest distance of the block's coolant from boiling at the cap [K]
     */
    public record Peaks(double coolantK, double coolantAtS, double oilK, double lowestBoilingMarginK) {}

    /**
     * @param seconds time with the coolant above its limit [s]
     * @param firstS when it first was, NaN if never [s]
     */
    public record AboveLimit(double seconds, double firstS) {}

    /**
     * @param fanAmpereHours charge that the fans took [Ah]
     * @param batteryAmpereHours charge that the alternator could not give [Ah]
     */
    public record Charge(double fanAmpereHours, double batteryAmpereHours) {}

    /**
     * @param storedJ energy stored at the end minus at the start [J]
     * @param errorShare energy in minus out minus stored, over energy in [-]
     */
    public record Energy(double storedJ, double errorShare) {}

    /**
     * One moment of a run.
     *
     * @param timeS time since the start [s]
     * @param pointId operating point of the phase
     * @param coolantK coolant in the block [K]
     * @param oilK oil [K]
     * @param gaugeK what the gauge sensor reads [K]
     * @param fanDuty duty of electric fans, slip of a clutch fan [-]
     * @param fanCurrentA current of all electric fans [A]
     * @param headK true temperature in the head, at its sensor's port [K]
     * @param fanSensorK what the sensor of the fan control reads [K]
     * @param voltageV voltage at the battery [V]
     * @param roadSpeedMPerS road speed [m/s]
     * @param thermostatLift thermostat lift [-]
     * @param radiatorK coolant out of the radiator [K]
     * @param underHoodK air under the hood [K]
     */
    public record Sample(
            double timeS,
            String pointId,
            double coolantK,
            double oilK,
            double gaugeK,
            double fanDuty,
            double fanCurrentA,
            double headK,
            double fanSensorK,
            double voltageV,
            double roadSpeedMPerS,
            double thermostatLift,
            double radiatorK,
            double underHoodK) {}

    /**
     * The coolant in the second half of the longest phase with the engine on, the last of equals.
     *
     * @param coolantK its mean there [K]
     * @param swingK its largest less its smallest value there [K]
     * @param gaugeSwingK the same of what the gauge shows [K]
     * @param pointId operating point of that phase
     */
    public record Settled(double coolantK, double swingK, double gaugeSwingK, String pointId) {}

    /**
     * Time with the engine on outside the window.
     *
     * @param secondsBelow colder than 85 deg C [s]
     * @param secondsAbove hotter than 90 deg C [s]
     */
    public record Window(double secondsBelow, double secondsAbove) {

        /** Lower end of the window, 85 deg C [K]; common practice, no source. */
        public static final double FROM_K = 358.15;

        /** Upper end of the window, 90 deg C [K]; common practice, no source. */
        public static final double TO_K = 363.15;
    }

    /**
     * @param peakFanA largest current of all electric fans, with the starting current of relays [A]
     * @param peakLoadA largest current of fans and everything else [A]
     * @param lowestVoltageV lowest voltage at the battery with the engine on [V]
     * @param deficitMinutes time with the engine on in which the alternator did not suffice [min]
     */
    public record Current(double peakFanA, double peakLoadA, double lowestVoltageV, double deficitMinutes) {

        /** Voltage that the battery holds when the alternator does not suffice [V]. */
        public static final double BATTERY_V = ElectricBalance.BATTERY_V;
    }

    /**
     * @param peakAirK hottest air under the hood [K]
     * @param peakPanelK hottest inner face of the panel [K]
     * @param peakTouchK hottest outer face, where a hand touches it [K]
     */
    public record Hood(double peakAirK, double peakPanelK, double peakTouchK) {}

    /**
     * A wetted sensor beside the true temperature in the head, over the whole run.
     *
     * @param placement where it sits
     * @param lowestErrorK reading less truth where it reads lowest against it [K]
     * @param lowestAtS when [s]
     * @param secondsLow time in which it reads more than 5 K too low [s]
     * @param longestLowS longest such time at a stretch [s]
     * @param standingErrorK lowest reading less truth while no coolant passes the radiator or no more than a shut thermostat
     *     leaks; NaN if there was no such time [K]
     * @param standingSeconds how long that was [s]
     * @param standingLowSeconds how long of it the sensor read more than 5 K too low [s]
     */
    public record SensorError(
            SensorPlacement placement,
            double lowestErrorK,
            double lowestAtS,
            double secondsLow,
            double longestLowS,
            double standingErrorK,
            double standingSeconds,
            double standingLowSeconds) {

        /** A reading lower than the truth by more than this misleads [K]; modelling choice. */
        public static final double MISLEADS_K = 5;
    }

    /**
     * One phase of the schedule, e.g. one heat.
     *
     * @param pointId its operating point
     * @param startS when it began [s]
     * @param seconds how long it was [s]
     * @param startCoolantK coolant at its start [K]
     * @param peakCoolantK hottest coolant in it [K]
     * @param endCoolantK coolant at its end [K]
     * @param peakOilK hottest oil in it [K]
     * @param secondsAboveLimit time above the coolant's limit [s]
     * @param fanAmpereHours charge that the fans took [Ah]
     */
    public record PhaseSummary(
            String pointId,
            double startS,
            double seconds,
            double startCoolantK,
            double peakCoolantK,
            double endCoolantK,
            double peakOilK,
            double secondsAboveLimit,
            double fanAmpereHours) {}

    /**
     * @param steps accepted steps
     * @param rejectedSteps steps that were tried and made shorter
     * @param evaluations evaluations of the equations
     * @param events edges of the fan control that were hit
     * @param eventErrorK largest distance of the reading from its edge where one was hit [K]
     */
    public record Numerics(int steps, int rejectedSteps, int evaluations, int events, double eventErrorK) {}
}

package headertank.app.check.stored;

import headertank.calc.result.RunResult;
import java.util.List;
import java.util.Optional;

/**
 * A run over time as stored, see {@link RunResult}. All numbers in SI.
 *
 * @param peakCoolantK hottest coolant in the block [K]
 * @param peakCoolantAtS when [s]
 * @param peakOilK hottest oil [K]
 * @param peakGaugeK the highest that the gauge shows [K]
 * @param lowestBoilingMarginK smallest distance from boiling at the cap [K]
 * @param secondsAboveLimit time above the coolant's limit [s]
 * @param firstAboveLimitS when it was first passed [s]; empty if never
 * @param batteryAmpereHours charge that the alternator could not give [Ah]
 * @param fanStarts how often the fans started
 * @param energyErrorShare what the solver left over of the energy [-]
 * @param settled where the coolant settled in the longest phase
 * @param window time outside the window that coolant is happy in
 * @param current electric load at its worst
 * @param hood air and panel at their hottest
 * @param sensors each place's sensor beside the true temperature
 * @param phases the run, phase by phase
 * @param numerics what the integration took
 * @param curves the run, thinned for drawing
 */
public record StoredRun(
        double peakCoolantK,
        double peakCoolantAtS,
        double peakOilK,
        double peakGaugeK,
        double lowestBoilingMarginK,
        double secondsAboveLimit,
        Optional<Double> firstAboveLimitS,
        double batteryAmpereHours,
        int fanStarts,
        double energyErrorShare,
        Optional<RunResult.Settled> settled,
        Optional<RunResult.Window> window,
        Optional<RunResult.Current> current,
        Optional<RunResult.Hood> hood,
        List<RunResult.SensorError> sensors,
        List<Phase> phases,
        Optional<RunResult.Numerics> numerics,
        Curves curves) {

    public StoredRun {
        firstAboveLimitS = firstAboveLimitS == null ? Optional.empty() : firstAboveLimitS;
        settled = settled == null ? Optional.empty() : settled;
        window = window == null ? Optional.empty() : window;
        current = current == null ? Optional.empty() : current;
        hood = hood == null ? Optional.empty() : hood;
        numerics = numerics == null ? Optional.empty() : numerics;
        sensors = sensors == null ? List.of() : List.copyOf(sensors);
        phases = phases == null ? List.of() : List.copyOf(phases);
        curves = curves == null ? Curves.NONE : curves;
    }

    /** A hand that touches metal hotter than this burns, 60 deg C [K]; common practice, no source. */
    public static final double BURN_K = 333.15;

    /** A phase with its name in plain English. */
    public record Phase(String label, RunResult.PhaseSummary summary) {}

    /** Charge that the fans took [Ah]. */
    public double fanAmpereHours() {
        return phases.stream().mapToDouble(p -> p.summary().fanAmpereHours()).sum();
    }

    /** Whether a hand on the hood's outer face would burn. */
    public boolean burnsAtTouch() {
        return hood.map(h -> h.peakTouchK() > BURN_K).orElse(false);
    }

    public double burnK() {
        return BURN_K;
    }

    /** A sensor that reads lower than the truth by more than this misleads [K]. */
    public double misleadsK() {
        return RunResult.SensorError.MISLEADS_K;
    }

    /** Length of the run [s]. */
    public double lengthS() {
        return phases.stream().mapToDouble(p -> p.summary().seconds()).sum();
    }

    /**
     * Moments of the run, one list for each quantity, all of the same length; between two moments the truth lies close to a
     * straight line.
     *
     * @param timeS time since the start [s]
     * @param coolantK coolant in the block [K]
     * @param headK true temperature in the head [K]
     * @param gaugeK what the gauge's sensor reads [K]
     * @param fanSensorK what the sensor of the fan control reads [K]
     * @param oilK oil [K]
     * @param radiatorK coolant out of the radiator [K]
     * @param underHoodK air under the hood [K]
     * @param fanDuty duty of electric fans, slip of a clutch fan [-]
     * @param fanCurrentA current of all electric fans [A]
     * @param voltageV voltage at the battery [V]
     * @param roadSpeedMPerS road speed [m/s]
     */
    public record Curves(
            List<Double> timeS,
            List<Double> coolantK,
            List<Double> headK,
            List<Double> gaugeK,
            List<Double> fanSensorK,
            List<Double> oilK,
            List<Double> radiatorK,
            List<Double> underHoodK,
            List<Double> fanDuty,
            List<Double> fanCurrentA,
            List<Double> voltageV,
            List<Double> roadSpeedMPerS) {

        /** A run of which no curve was kept. */
        static final Curves NONE = new Curves(
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of());

        public Curves {
            timeS = List.copyOf(timeS);
            coolantK = List.copyOf(coolantK);
            headK = List.copyOf(headK);
            gaugeK = List.copyOf(gaugeK);
            fanSensorK = List.copyOf(fanSensorK);
            oilK = List.copyOf(oilK);
            radiatorK = List.copyOf(radiatorK);
            underHoodK = List.copyOf(underHoodK);
            fanDuty = List.copyOf(fanDuty);
            fanCurrentA = List.copyOf(fanCurrentA);
            voltageV = List.copyOf(voltageV);
            roadSpeedMPerS = List.copyOf(roadSpeedMPerS);
        }

        /** Whether there is anything to draw. */
        public boolean none() {
            return timeS.size() < 2;
        }
    }
}

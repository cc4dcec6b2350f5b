package headertank.app.check.stored;

import java.util.List;
import java.util.Optional;

/**
 * A run over time as stored, see {@link headertank.calc.transients.RunResult}. All numbers in SI.
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
        Optional<Settled> settled,
        Optional<Window> window,
        Optional<Current> current,
        Optional<Hood> hood,
        List<SensorError> sensors,
        List<Phase> phases,
        Optional<Numerics> numerics,
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

    /** A sensor that reads lower than the truth by more than this misleads, 5 K; modelling choice. */
    private static final double MISLEADS_K = 5;

    /** Where the coolant settled in the second half of the longest phase, and how far it and the needle swung there. */
    public record Settled(double coolantK, double swingK, double gaugeSwingK, String pointId) {}

    /** Time with the engine on below and above the window that coolant is happy in [s]. */
    public record Window(double secondsBelow, double secondsAbove) {}

    /** Electric load at its worst; {@code deficitMinutes} is how long the alternator did not suffice. */
    public record Current(double peakFanA, double peakLoadA, double lowestVoltageV, double deficitMinutes) {}

    /** Air under the hood, inner and outer face of the panel at their hottest [K]. */
    public record Hood(double peakAirK, double peakPanelK, double peakTouchK) {}

    /**
     * A sensor beside the true temperature in the head.
     *
     * @param placement where it sits, a token of the field
     * @param lowestErrorK reading less truth where it reads lowest against it [K]
     * @param lowestAtS when [s]
     * @param secondsLow time in which it misleads [s]
     * @param longestLowS longest such time at a stretch [s]
     * @param standingErrorK lowest reading less truth while the coolant stands; NaN if it never does [K]
     * @param standingSeconds how long that was [s]
     * @param standingLowSeconds how long of it the sensor misled [s]
     */
    public record SensorError(
            String placement,
            double lowestErrorK,
            double lowestAtS,
            double secondsLow,
            double longestLowS,
            double standingErrorK,
            double standingSeconds,
            double standingLowSeconds) {}

    /** One phase of the schedule: temperatures [K], times [s], charge that the fans took [Ah]. */
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

    /** What the integration took. */
    public record Numerics(int steps, int rejectedSteps, int evaluations, int events, double eventErrorK) {}

    /** A phase with what the duty's author calls its point. */
    public record Phase(String label, PhaseSummary summary) {}

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
        return MISLEADS_K;
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

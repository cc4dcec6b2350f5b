package headertank.app.check.stored;

import java.util.List;
import java.util.Optional;

/**
 * The same car and duty with one thing changed or broken. All numbers in SI.
 *
 * @param kind what is different
 * @param asIs whether the car is like this as it stands
 * @param setK set point of the fan control [K]
 * @param verdict what expected margins alone would say, without uncertainty
 * @param marginK the smaller of the coolant's margins at the peaks of run and stay [K]
 * @param run the schedule
 * @param stay half an hour at the point where the duty idles; empty when it never does
 * @param current electric load at its worst in the run
 * @param window time outside the window in the run
 * @param fanAmpereHours charge that the fans took in the run [Ah]
 * @param fanStarts how often the fans started in the run
 */
public record WhatIf(
        Kind kind,
        boolean asIs,
        double setK,
        StoredVerdict verdict,
        double marginK,
        Course run,
        Optional<Course> stay,
        StoredRun.Current current,
        StoredRun.Window window,
        double fanAmpereHours,
        int fanStarts) {

    /** What is different, in the order of the page. */
    public enum Kind {
        /** As the car stands, when it has neither switch nor ramp. */
        AS_IS,
        /** One relay. */
        SWITCH,
        /** Duty that rises with temperature. */
        RAMP,
        /** The fan sensor sits in the hose to the radiator. */
        HOSE_SENSOR,
        /** The fan sensor, which is not there, sits in the block. */
        BLOCK_SENSOR,
        /** One fan's fuse has blown. */
        ONE_FAN_OUT,
        /** The control never switches the fans on. */
        NEVER_START,
        /** Set point 5 K lower. */
        SET_5_LOWER,
        /** Set point 10 K lower. */
        SET_10_LOWER
    }

    public WhatIf {
        stay = stay == null ? Optional.empty() : stay;
    }

    /** Whether the coolant would boil: beyond that the model only gives a lower bound. */
    public boolean boils() {
        return run.lowestBoilingMarginK() < 0
                || stay.map(s -> s.lowestBoilingMarginK() < 0).orElse(false);
    }

    /**
     * Coolant over time.
     *
     * @param peakCoolantK hottest coolant in the block [K]
     * @param peakCoolantAtS when [s]
     * @param firstAboveLimitS when the limit was first passed [s]; empty if never
     * @param secondsAboveLimit for how long [s]
     * @param lowestBoilingMarginK smallest distance from boiling at the cap [K]
     * @param swingK largest less smallest coolant in the second half of the longest phase [K]
     * @param gaugeSwingK the same of the needle [K]
     * @param timeS moments for drawing [s]
     * @param coolantK coolant then [K]
     * @param gaugeK what the gauge shows then [K]
     */
    public record Course(
            double peakCoolantK,
            double peakCoolantAtS,
            Optional<Double> firstAboveLimitS,
            double secondsAboveLimit,
            double lowestBoilingMarginK,
            double swingK,
            double gaugeSwingK,
            List<Double> timeS,
            List<Double> coolantK,
            List<Double> gaugeK) {
        public Course {
            firstAboveLimitS = firstAboveLimitS == null ? Optional.empty() : firstAboveLimitS;
            timeS = List.copyOf(timeS);
            coolantK = List.copyOf(coolantK);
            gaugeK = List.copyOf(gaugeK);
        }

        /** Coolant at the end [K]; NaN when no curve was kept. */
        public double endCoolantK() {
            return coolantK.isEmpty() ? Double.NaN : coolantK.get(coolantK.size() - 1);
        }

        /** Whether the coolant was hottest at the very end, so that its swing is a climb. */
        public boolean climbs() {
            return !timeS.isEmpty() && swingK > 0.5 && peakCoolantAtS > timeS.get(timeS.size() - 1) - 5;
        }
    }
}

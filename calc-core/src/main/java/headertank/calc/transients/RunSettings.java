package headertank.calc.transients;

import headertank.calc.control.FanControlSpec;
import java.util.Optional;

/**
 * How a run is made.
 *
 * @param control fan control to use instead of the car's own
 * @param faults what is broken
 * @param outputHz samples of the trace per second, 0 for none, up to 100 [1/s]
 * @param peaksOnly whether only peaks, boiling margin, charges, starts and energy are wanted: everything else of the result
 *     is then empty or no number, and steps may be up to three seconds long
 */
public record RunSettings(Optional<FanControlSpec> control, RunFaults faults, double outputHz, boolean peaksOnly) {

    /** The car's own control, nothing broken, a sample every three seconds. */
    public static final RunSettings STANDARD = new RunSettings(Optional.empty(), RunFaults.NONE, 1.0 / 3, false);

    /** The same for peaks only, for sampling. */
    public static final RunSettings PEAKS_ONLY = new RunSettings(Optional.empty(), RunFaults.NONE, 0, true);

    public RunSettings {
        if (!(outputHz >= 0 && outputHz <= 100)) {
            throw new IllegalArgumentException("outputHz = " + outputHz + ": allowed is 0 to 100");
        }
    }

    /** @return the same with this fan control */
    public RunSettings with(FanControlSpec other) {
        return new RunSettings(Optional.of(other), faults, outputHz, peaksOnly);
    }

    /** @return the same with these faults */
    public RunSettings with(RunFaults other) {
        return new RunSettings(control, other, outputHz, peaksOnly);
    }

    /** @return the same with so many samples of the trace per second [1/s] */
    public RunSettings at(double hz) {
        return new RunSettings(control, faults, hz, peaksOnly);
    }
}

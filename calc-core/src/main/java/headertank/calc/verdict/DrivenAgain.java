package headertank.calc.verdict;

import headertank.calc.result.RunResult;
import java.util.Optional;

/**
 * A car's schedule driven again with one thing changed or broken.
 *
 * @param kind what is different
 * @param asIs whether the car is like this as it stands
 * @param setK set point of the fan control [K]
 * @param verdict the verdict on such a car, by the same rules and as unsure as that on the car as it stands; on the car as it stands,
 *     its own
 * @param marginK coolant margin that decides, as the duty is judged [K]; for something broken, that of the car as it stands and what
 *     its peaks in run and stay move by
 * @param run the schedule, with a trace
 * @param stay half an hour at the point where the duty idles, with a trace; empty when it never does
 */
public record DrivenAgain(
        Kind kind,
        boolean asIs,
        double setK,
        Verdict verdict,
        double marginK,
        RunResult run,
        Optional<RunResult> stay) {

    /** What is different. */
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
}

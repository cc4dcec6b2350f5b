package headertank.calc.transients;

import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import java.util.List;
import java.util.Optional;

/**
 * The same car and duty on two fan controls: the run itself, and the needle while the car stands for half an hour at the
 * point of the duty where it idles (its first point if it never does), from the coolant that its schedule starts with.
 *
 * @param first what the first control made of the schedule
 * @param second what the second control made of it
 * @param firstHeld the long stay on the first control; its {@code settled} has the swing of the last quarter of an hour
 * @param secondHeld the long stay on the second control
 */
public record ControlComparison(RunResult first, RunResult second, RunResult firstHeld, RunResult secondHeld) {

    private static final double STAY_S = 1800;

    /**
     * @param plant the car
     * @param duty a duty with a schedule
     * @param first one control, e.g. a switch
     * @param second the other, e.g. a ramp
     * @param settings faults and output of all runs; its own control is not used
     * @return both, side by side
     * @throws IllegalArgumentException when the duty has no schedule
     */
    public static ControlComparison of(
            Plant plant, Duty duty, FanControlSpec first, FanControlSpec second, RunSettings settings) {
        RunResult a = RunSolver.run(plant, duty, settings.with(first));
        RunResult b = RunSolver.run(plant, duty, settings.with(second));
        Duty stay = stay(duty);
        return new ControlComparison(
                a,
                b,
                RunSolver.run(plant, stay, settings.with(first)),
                RunSolver.run(plant, stay, settings.with(second)));
    }

    /** @return half an hour where the duty idles, or at its first point when it never does */
    public static Duty stay(Duty duty) {
        OperatingPoint at = duty.points().stream()
                .filter(OperatingPoint::idles)
                .findFirst()
                .orElse(duty.points().get(0));
        Schedule held = new Schedule(
                duty.schedule().orElseThrow().startCoolantK(), List.of(new Schedule.Phase(at.id(), STAY_S)));
        return new Duty(duty.id(), duty.label(), duty.points(), Optional.of(held), duty.source());
    }
}

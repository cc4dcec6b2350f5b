package headertank.calc.transients;

import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What it buys and costs to set the fans lower before a hard session: the same car, control and schedule with all set points
 * moved down, each run from a wait in which the car comes to what its control holds.
 *
 * @param usual the run on the set points as they are
 * @param lowered one line for each lower setting, in the order asked for
 */
public record SetPointComparison(RunResult usual, List<Lowered> lowered) {

    /** A lower peak of less than this is nothing bought [K]; modelling choice. */
    public static final double BOUGHT_K = 0.5;

    /** More time below the window than this is overcooling [s]; modelling choice. */
    public static final double OVERCOOLED_S = 10;

    public SetPointComparison {
        lowered = List.copyOf(lowered);
    }

    /** What a lower setting comes to. */
    public enum Worth {
        /** A lower peak, and no more time below the window. */
        BUYS,
        /** A lower peak, for time below the window. */
        BUYS_AND_OVERCOOLS,
        /** The same peak; the coolant is only too cold for longer. */
        ONLY_OVERCOOLS,
        /** Nothing worth the name changes but the charge. */
        NOTHING
    }

    /**
     * One lower setting beside the usual one.
     *
     * @param byK how far the set points were moved down [K]
     * @param run what the schedule did to the car
     * @param lowerPeakK bought: peak of the coolant on the usual setting less that on this one [K]
     * @param fewerSecondsAbove bought: time above the window less than before [s]
     * @param moreSecondsBelow paid: time below the window, engine on, more than before [s]
     * @param moreAmpereHours paid: charge of the fans more than before [Ah]
     * @param moreBatteryAmpereHours paid: the part of it that the alternator cannot give [Ah]
     */
    public record Lowered(
            double byK,
            RunResult run,
            double lowerPeakK,
            double fewerSecondsAbove,
            double moreSecondsBelow,
            double moreAmpereHours,
            double moreBatteryAmpereHours) {

        /** @return what it comes to */
        public Worth worth() {
            boolean overcools = moreSecondsBelow > OVERCOOLED_S;
            if (lowerPeakK >= BOUGHT_K) {
                return overcools ? Worth.BUYS_AND_OVERCOOLS : Worth.BUYS;
            }
            return overcools ? Worth.ONLY_OVERCOOLS : Worth.NOTHING;
        }

        /** @return the same in one plain sentence */
        public String sentence() {
            return switch (worth()) {
                case BUYS -> "Buys degrees at the peak and does not overcool.";
                case BUYS_AND_OVERCOOLS -> "Buys degrees at the peak, for time in which the coolant is too cold.";
                case ONLY_OVERCOOLS -> "Buys nothing at the peak, only overcools.";
                case NOTHING -> "Buys nothing at the peak; the fans only run longer.";
            };
        }
    }

    /**
     * @param plant the car
     * @param duty a duty with a schedule, the hard session
     * @param usual the fan control as it is set
     * @param lowerByK how far to move its set points down, each above 0 [K]
     * @param waitS how long the car idles before the schedule, 0 for not at all; without an idling point it does not wait [s]
     * @param settings faults and output; its own control is not used
     * @return each lower setting beside the usual one
     * @throws IllegalArgumentException when the duty has no schedule, or a step is not above 0
     */
    public static SetPointComparison of(
            Plant plant, Duty duty, FanControlSpec usual, List<Double> lowerByK, double waitS, RunSettings settings) {
        Duty whole = afterWait(duty, waitS);
        RunResult now = RunSolver.run(plant, whole, settings.with(usual));
        List<Lowered> lowered = new ArrayList<>();
        for (double by : lowerByK) {
            if (!(by > 0)) {
                throw new IllegalArgumentException("lowerByK = " + by + ": allowed is above 0");
            }
            RunResult run = RunSolver.run(plant, whole, settings.with(usual.shifted(-by)));
            lowered.add(new Lowered(
                    by,
                    run,
                    now.peakCoolantK() - run.peakCoolantK(),
                    now.window().secondsAbove() - run.window().secondsAbove(),
                    run.window().secondsBelow() - now.window().secondsBelow(),
                    run.fanAmpereHours() - now.fanAmpereHours(),
                    run.batteryAmpereHours() - now.batteryAmpereHours()));
        }
        return new SetPointComparison(now, lowered);
    }

    private static Duty afterWait(Duty duty, double waitS) {
        Schedule schedule = duty.schedule()
                .orElseThrow(() -> new IllegalArgumentException("duty " + duty.id() + " has no schedule"));
        Optional<OperatingPoint> idle =
                duty.points().stream().filter(OperatingPoint::idles).findFirst();
        if (!(waitS > 0) || idle.isEmpty()) {
            return duty;
        }
        List<Schedule.Phase> phases = new ArrayList<>();
        phases.add(new Schedule.Phase(idle.get().id(), waitS));
        phases.addAll(schedule.phases());
        return new Duty(
                duty.id(),
                duty.label(),
                duty.points(),
                Optional.of(new Schedule(schedule.startCoolantK(), phases)),
                duty.source());
    }
}

package headertank.calc.transients;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.rating.Plant;

/**
 * What is broken during a run. A fan that stands leaves the part of the core that it covered open, so that air may flow
 * back there when there are no flaps (modelling choice).
 *
 * @param fansOut number of electric fans whose fuse has blown; as many as there are or more: none turns
 * @param neverStart whether the control never switches the fans on
 */
public record RunFaults(int fansOut, boolean neverStart) {

    /** Nothing is broken. */
    public static final RunFaults NONE = new RunFaults(0, false);

    public RunFaults {
        if (fansOut < 0 || fansOut > 16) {
            throw new IllegalArgumentException("fansOut = " + fansOut + ": allowed is 0 to 16");
        }
    }

    /** @return one fan's fuse blown */
    public static RunFaults oneFanOut() {
        return new RunFaults(1, false);
    }

    /** @return a control that never switches the fans on */
    public static RunFaults failureToStart() {
        return new RunFaults(0, true);
    }

    /** @return whether no electric fan can turn on this car */
    boolean noneTurns(Plant plant) {
        return neverStart || fansOut >= plant.resolved().value(BuildField.FAN_COUNT);
    }

    /** @return the car with the fans that are left */
    Plant left(Plant plant) {
        if (fansOut == 0 || plant.fanDrive() != FanDrive.ELECTRIC || noneTurns(plant)) {
            return plant;
        }
        Resolved r = plant.resolved();
        double count = r.value(BuildField.FAN_COUNT);
        double share = (count - fansOut) / count;
        return Plant.of(
                r.with(BuildField.FAN_COUNT, count - fansOut)
                        .with(
                                BuildField.FAN_COVER,
                                BuildField.FAN_COVER.allowed().clamp(share * r.value(BuildField.FAN_COVER))),
                plant.factors());
    }
}

package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.quantity.Message;
import java.util.List;

/** No fan turns: control, relay, fuse, or the clutch of a fan on the engine. */
public final class FansOut implements CauseOfPractice {

    @Override
    public String id() {
        return "fans-out";
    }

    @Override
    public Message name() {
        return CauseText.FANS_OUT.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return !car.is(BuildField.FAN_DRIVE, FanDrive.NONE) ? 9 : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.chosen(BuildField.FAN_DRIVE, FanDrive.NONE);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_SPEED, 0.80),
                new Chance(Observation.STARTED_AT_ONCE, 0.85),
                new Chance(Observation.FAN_SILENT, 0.88),
                new Chance(Observation.FAN_RUN_NONE, 0.60),
                new Chance(Observation.FAN_START_NEVER, 0.90),
                new Chance(Observation.LOWER_HOSE_HOT, 0.75),
                new Chance(Observation.FORCED_FAN_COOLS, 0.55));
    }
}

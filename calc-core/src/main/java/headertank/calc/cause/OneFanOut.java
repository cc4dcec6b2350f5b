package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.quantity.Message;
import java.util.List;

/** One of several electric fans stands: a fuse, a connector, a motor. */
public final class OneFanOut implements CauseOfPractice {

    @Override
    public String id() {
        return "one-fan-out";
    }

    @Override
    public Message name() {
        return CauseText.ONE_FAN_OUT.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return car.is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC) && car.value(BuildField.FAN_COUNT) > 1 ? 7 : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        double fans = car.car().value(BuildField.FAN_COUNT);
        return car.set(BuildField.FAN_COUNT, fans - 1).scaled(BuildField.FAN_COVER, (fans - 1) / fans);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_SPEED, 0.65),
                new Chance(Observation.STARTED_AT_ONCE, 0.80),
                new Chance(Observation.FAN_RUN_ONE_STANDS, 0.92),
                new Chance(Observation.FAN_WEAK, 0.50),
                new Chance(Observation.LOWER_HOSE_HOT, 0.65),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.50));
    }
}

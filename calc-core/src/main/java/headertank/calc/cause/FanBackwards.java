package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.quantity.Message;
import java.util.List;

/** A fan turns the wrong way: what it moves fights the air that comes in. */
public final class FanBackwards implements CauseOfPractice {

    @Override
    public String id() {
        return "fan-backwards";
    }

    @Override
    public Message name() {
        return CauseText.FAN_BACKWARDS.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return car.is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC) ? 2 : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        double left = 0.45 - 0.3 * severity;
        return car.scaled(BuildField.FAN_FLOW, left).scaled(BuildField.FAN_SHUT_OFF, left * left);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_SPEED, 0.75),
                new Chance(Observation.STARTED_AFTER_WORK, 0.85),
                new Chance(Observation.FAN_RUN_WRONG_WAY, 0.93),
                new Chance(Observation.FAN_LOUD, 0.85),
                new Chance(Observation.LOWER_HOSE_HOT, 0.70),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.85));
    }
}

package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import java.util.List;

/** Something on the car is not what is written: another core, another fan, another mixture. */
public final class SpecDiffers implements CauseOfPractice {

    @Override
    public String id() {
        return "spec-differs";
    }

    @Override
    public Message name() {
        return CauseText.SPEC_DIFFERS.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 4;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.scaled(BuildField.CORE_WIDTH, 0.95 - 0.25 * severity)
                .scaled(BuildField.FAN_FLOW, 0.95 - 0.3 * severity);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.STARTED_AFTER_WORK, 0.80),
                new Chance(Observation.SPEC_DIFFERS, 0.90),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.55));
    }
}

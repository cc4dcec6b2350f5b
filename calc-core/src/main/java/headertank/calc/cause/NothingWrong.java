package headertank.calc.cause;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import java.util.List;

/** Nothing is wrong: the car does what a sound one does there. */
public final class NothingWrong implements CauseOfPractice {

    @Override
    public String id() {
        return "nothing-wrong";
    }

    @Override
    public Message name() {
        return CauseText.NOTHING_WRONG.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 8;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car;
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_REST, 0.70),
                new Chance(Observation.STARTED_AT_ONCE, 0.70),
                new Chance(Observation.NEEDLE_CREPT, 0.80),
                new Chance(Observation.FORCED_FAN_COOLS, 0.90),
                new Chance(Observation.LOSS_NONE, 0.85));
    }
}

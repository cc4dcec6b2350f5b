package headertank.calc.cause;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import java.util.List;

/** Hot exhaust near hoses, duct or core. */
public final class ExhaustNear implements CauseOfPractice {

    @Override
    public String id() {
        return "exhaust-near";
    }

    @Override
    public Message name() {
        return CauseText.EXHAUST_NEAR.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 2;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.inAir(2 + 8 * severity).heated(1.02 + 0.08 * severity);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.STARTED_AFTER_WORK, 0.75),
                new Chance(Observation.SEALS_EXHAUST_NEAR, 0.88),
                new Chance(Observation.LOWER_HOSE_HOT, 0.60));
    }
}

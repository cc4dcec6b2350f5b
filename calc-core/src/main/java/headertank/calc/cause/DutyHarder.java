package headertank.calc.cause;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** It was driven harder, or longer, than what was agreed. */
public final class DutyHarder implements CauseOfPractice {

    @Override
    public String id() {
        return "duty-harder";
    }

    @Override
    public Message name() {
        return CauseText.DUTY_HARDER.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 6;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.heated(harder(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.DUTY_HARDER_AMOUNT.with(SiFigure.share(harder(severity) - 1)));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_REST, 0.85),
                new Chance(Observation.STARTED_AT_ONCE, 0.85),
                new Chance(Observation.DAY_HARDER, 0.85),
                new Chance(Observation.LOWER_HOSE_HOT, 0.60),
                new Chance(Observation.NEEDLE_CREPT, 0.75),
                new Chance(Observation.FORCED_FAN_COOLS, 0.85));
    }

    private static double harder(double severity) {
        return 1.1 + 0.4 * severity;
    }
}

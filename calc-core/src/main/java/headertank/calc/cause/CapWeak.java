package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** The cap does not hold its pressure: the coolant boils early. */
public final class CapWeak implements CauseOfPractice {

    @Override
    public String id() {
        return "cap-weak";
    }

    @Override
    public Message name() {
        return CauseText.CAP_WEAK.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 5;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.scaled(BuildField.CAP_HELD, left(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.CAP_WEAK_AMOUNT.with(SiFigure.share(left(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.STARTED_OVER_WEEKS, 0.45),
                new Chance(Observation.CAP_LEAKS, 0.93),
                new Chance(Observation.LOSS_SOME, 0.50),
                new Chance(Observation.LOSS_MUCH, 0.20),
                new Chance(Observation.LEVEL_LOW, 0.40));
    }

    private static double left(double severity) {
        return 0.6 - 0.6 * severity;
    }
}

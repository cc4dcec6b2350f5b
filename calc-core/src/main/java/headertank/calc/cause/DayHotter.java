package headertank.calc.cause;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** The day was hotter than what was agreed, or than what was noted. */
public final class DayHotter implements CauseOfPractice {

    @Override
    public String id() {
        return "day-hotter";
    }

    @Override
    public Message name() {
        return CauseText.DAY_HOTTER.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return seen.ambientK().isPresent() ? 1 : 5;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.inAir(hotterK(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.DAY_HOTTER_AMOUNT.with(SiFigure.difference(hotterK(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_REST, 0.60),
                new Chance(Observation.STARTED_AT_ONCE, 0.85),
                new Chance(Observation.DAY_HOTTER, 0.88),
                new Chance(Observation.LOWER_HOSE_HOT, 0.60),
                new Chance(Observation.NEEDLE_CREPT, 0.75));
    }

    private static double hotterK(double severity) {
        return 4 + 12 * severity;
    }
}

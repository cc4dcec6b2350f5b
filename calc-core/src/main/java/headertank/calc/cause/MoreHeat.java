package headertank.calc.cause;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** The engine or a brake makes more heat: fuel, ignition, tune, a brake that drags. */
public final class MoreHeat implements CauseOfPractice {

    @Override
    public String id() {
        return "more-heat";
    }

    @Override
    public Message name() {
        return CauseText.MORE_HEAT.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 6;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.heated(heat(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.MORE_HEAT_AMOUNT.with(SiFigure.share(heat(severity) - 1)));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_REST, 0.60),
                new Chance(Observation.STARTED_AFTER_WORK, 0.50),
                new Chance(Observation.ENGINE_ROUGH, 0.50),
                new Chance(Observation.HEAT_SOURCES_MORE, 0.80),
                new Chance(Observation.LOWER_HOSE_HOT, 0.60),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.40));
    }

    private static double heat(double severity) {
        return 1.1 + 0.35 * severity;
    }
}

package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** A part of the core's face is shut: mud, insects, bent fins, something in front of it. */
public final class AirSideBlocked implements CauseOfPractice {

    @Override
    public String id() {
        return "air-side-blocked";
    }

    @Override
    public Message name() {
        return CauseText.AIR_SIDE_BLOCKED.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 9;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.set(
                BuildField.CORE_BLOCKED,
                1 - (1 - shut(severity)) * (1 - car.car().value(BuildField.CORE_BLOCKED)));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.AIR_SIDE_BLOCKED_AMOUNT.with(SiFigure.share(shut(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_REST, 0.65),
                new Chance(Observation.STARTED_OVER_WEEKS, 0.55),
                new Chance(Observation.CORE_LOOK_SHUT, 0.85),
                new Chance(Observation.CORE_FACE_PATCHY, 0.60),
                new Chance(Observation.LOWER_HOSE_HOT, 0.70),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.60),
                new Chance(Observation.NEEDLE_CREPT, 0.75));
    }

    private static double shut(double severity) {
        return 0.15 + 0.55 * severity;
    }
}

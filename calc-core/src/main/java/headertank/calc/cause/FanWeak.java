package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** Every fan moves less air than it should: worn brushes, a bad ground, a tired clutch. */
public final class FanWeak implements CauseOfPractice {

    @Override
    public String id() {
        return "fan-weak";
    }

    @Override
    public Message name() {
        return CauseText.FAN_WEAK.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return !car.is(BuildField.FAN_DRIVE, FanDrive.NONE) ? 5 : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.scaled(BuildField.FAN_FLOW, left(severity))
                .scaled(BuildField.FAN_SHUT_OFF, left(severity) * left(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.FAN_WEAK_AMOUNT.with(SiFigure.share(left(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_SPEED, 0.65),
                new Chance(Observation.STARTED_OVER_WEEKS, 0.50),
                new Chance(Observation.FAN_RUN_CURRENT_OFF, 0.85),
                new Chance(Observation.FAN_WEAK, 0.50),
                new Chance(Observation.LOWER_HOSE_HOT, 0.65),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.70));
    }

    private static double left(double severity) {
        return 0.8 - 0.4 * severity;
    }
}

package headertank.calc.cause;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** The gauge shows more than there is: sensor, ground, wiring. */
public final class GaugeOff implements CauseOfPractice {

    @Override
    public String id() {
        return "gauge-off";
    }

    @Override
    public Message name() {
        return CauseText.GAUGE_OFF.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 6;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.showing(moreK(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.GAUGE_OFF_AMOUNT.with(SiFigure.difference(moreK(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_BY_NOTHING, 0.65),
                new Chance(Observation.STARTED_AT_ONCE, 0.60),
                new Chance(Observation.SECOND_GAUGE_LESS, 0.90),
                new Chance(Observation.NEEDLE_JUMPED, 0.35),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.40));
    }

    private static double moreK(double severity) {
        return 6 + 24 * severity;
    }
}

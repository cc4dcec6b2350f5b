package headertank.calc.cause;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import java.util.List;

/** The gauge follows late: it still showed what the car had left behind. */
public final class GaugeLagging implements CauseOfPractice {

    @Override
    public String id() {
        return "gauge-lagging";
    }

    @Override
    public Message name() {
        return CauseText.GAUGE_LAGGING.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 2;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.showing(2 + 8 * severity);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_REST, 0.75),
                new Chance(Observation.STARTED_AFTER_WORK, 0.50),
                new Chance(Observation.SECOND_GAUGE_SOONER, 0.85),
                new Chance(Observation.NEEDLE_CREPT, 0.80));
    }
}

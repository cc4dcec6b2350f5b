package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.quantity.Message;
import java.util.List;

/** The gauge's sensor sits where it does not feel the engine: it tells what passes it, late. */
public final class GaugeInHose implements CauseOfPractice {

    @Override
    public String id() {
        return "gauge-in-hose";
    }

    @Override
    public Message name() {
        return CauseText.GAUGE_IN_HOSE.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return !car.is(BuildField.GAUGE_SENSOR, SensorPlacement.RADIATOR_HOSE) ? 2 : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.chosen(BuildField.GAUGE_SENSOR, SensorPlacement.RADIATOR_HOSE);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.STARTED_AFTER_WORK, 0.80),
                new Chance(Observation.SECOND_GAUGE_ELSEWHERE, 0.90),
                new Chance(Observation.NEEDLE_SHOT_UP, 0.50));
    }
}

package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.quantity.Message;
import java.util.List;

/** The thermostat stays open: a cold engine warms slowly, a hot one knows no difference. */
public final class ThermostatOpen implements CauseOfPractice {

    @Override
    public String id() {
        return "thermostat-open";
    }

    @Override
    public Message name() {
        return CauseText.THERMOSTAT_OPEN.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return car.is(BuildField.THERMOSTAT, ThermostatFitting.FITTED) ? 2 : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.set(BuildField.THERMOSTAT_OPENING, 333.15 - 10 * severity);
    }

    @Override
    public List<Chance> signs() {
        return List.of(new Chance(Observation.POT_OPEN, 0.90), new Chance(Observation.HEATER_COLD, 0.40));
    }
}

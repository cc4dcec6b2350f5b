package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.quantity.Message;
import java.util.List;

/** The thermostat stays all but shut. */
public final class ThermostatShut implements CauseOfPractice {

    @Override
    public String id() {
        return "thermostat-shut";
    }

    @Override
    public Message name() {
        return CauseText.THERMOSTAT_SHUT.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return car.is(BuildField.THERMOSTAT, ThermostatFitting.FITTED) ? 7 : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.set(BuildField.THERMOSTAT_OPENING, 373.15 + 10 * severity);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_BY_NOTHING, 0.75),
                new Chance(Observation.STARTED_AT_ONCE, 0.80),
                new Chance(Observation.POT_SHUT, 0.90),
                new Chance(Observation.UPPER_HOSE_COLD, 0.70),
                new Chance(Observation.LOWER_HOSE_COLD, 0.85),
                new Chance(Observation.NEEDLE_SHOT_UP, 0.60),
                new Chance(Observation.TANK_FLOW_WEAK, 0.40),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.88),
                new Chance(Observation.CORE_FACE_PATCHY, 0.25));
    }
}

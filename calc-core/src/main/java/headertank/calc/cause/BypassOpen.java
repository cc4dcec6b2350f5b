package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.quantity.Message;
import java.util.List;

/** Coolant goes round the radiator through a bypass that should be shut. */
public final class BypassOpen implements CauseOfPractice {

    @Override
    public String id() {
        return "bypass-open";
    }

    @Override
    public Message name() {
        return CauseText.BYPASS_OPEN.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return car.is(BuildField.THERMOSTAT, ThermostatFitting.FITTED)
                        && (car.is(BuildField.THERMOSTAT_BYPASS, BypassState.CLOSES_WITH_LIFT)
                                || car.is(BuildField.THERMOSTAT_BYPASS, BypassState.BLOCKED))
                ? 2
                : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.chosen(BuildField.THERMOSTAT_BYPASS, severity > 0.5 ? BypassState.OPEN : BypassState.RESTRICTED);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_REST, 0.55),
                new Chance(Observation.STARTED_AFTER_WORK, 0.65),
                new Chance(Observation.POT_FOOT_MISSES, 0.85),
                new Chance(Observation.LOWER_HOSE_WARM, 0.55),
                new Chance(Observation.TANK_FLOW_WEAK, 0.40),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.75));
    }
}

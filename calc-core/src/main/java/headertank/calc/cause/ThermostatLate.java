package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** The thermostat opens later than it should. */
public final class ThermostatLate implements CauseOfPractice {

    @Override
    public String id() {
        return "thermostat-late";
    }

    @Override
    public Message name() {
        return CauseText.THERMOSTAT_LATE.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return car.is(BuildField.THERMOSTAT, ThermostatFitting.FITTED) ? 4 : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.moved(BuildField.THERMOSTAT_OPENING, lateK(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.THERMOSTAT_LATE_AMOUNT.with(SiFigure.difference(lateK(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_BY_NOTHING, 0.35),
                new Chance(Observation.STARTED_OVER_WEEKS, 0.40),
                new Chance(Observation.POT_LATE, 0.88),
                new Chance(Observation.LOWER_HOSE_COLD, 0.35),
                new Chance(Observation.LOWER_HOSE_WARM, 0.45),
                new Chance(Observation.UPPER_HOSE_COLD, 0.25),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.75));
    }

    private static double lateK(double severity) {
        return 5 + 13 * severity;
    }
}

package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** The pump gives too little: belt, impeller, a suction hose that collapses. */
public final class CoolantFlowLow implements CauseOfPractice {

    @Override
    public String id() {
        return "coolant-flow-low";
    }

    @Override
    public Message name() {
        return CauseText.COOLANT_FLOW_LOW.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 8;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.scaled(BuildField.PUMP_FLOW, left(severity))
                .scaled(BuildField.PUMP_HEAD, left(severity) * left(severity));
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.COOLANT_FLOW_LOW_AMOUNT.with(SiFigure.share(left(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_BY_NOTHING, 0.40),
                new Chance(Observation.STARTED_OVER_WEEKS, 0.40),
                new Chance(Observation.BELT_SLIPS, 0.50),
                new Chance(Observation.TANK_FLOW_WEAK, 0.78),
                new Chance(Observation.LOWER_HOSE_COLD, 0.40),
                new Chance(Observation.LOWER_HOSE_WARM, 0.45),
                new Chance(Observation.HEATER_COLD, 0.40),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.75));
    }

    private static double left(double severity) {
        return 0.65 - 0.5 * severity;
    }
}

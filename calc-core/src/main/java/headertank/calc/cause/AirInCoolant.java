package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** Air in the system or too little coolant: the pump draws foam, the sensor may stand in steam. */
public final class AirInCoolant implements CauseOfPractice {

    @Override
    public String id() {
        return "air-in-coolant";
    }

    @Override
    public Message name() {
        return CauseText.AIR_IN_COOLANT.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 11;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.scaled(BuildField.PUMP_FLOW, left(severity))
                .scaled(BuildField.PUMP_HEAD, left(severity))
                .boiling(-3 * severity);
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.AIR_IN_COOLANT_AMOUNT.with(SiFigure.share(left(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_BY_NOTHING, 0.45),
                new Chance(Observation.STARTED_AFTER_WORK, 0.45),
                new Chance(Observation.LEVEL_LOW, 0.85),
                new Chance(Observation.LOSS_SOME, 0.40),
                new Chance(Observation.LOSS_MUCH, 0.30),
                new Chance(Observation.HEATER_COLD, 0.50),
                new Chance(Observation.NEEDLE_JUMPED, 0.40),
                new Chance(Observation.NEEDLE_SHOT_UP, 0.35),
                new Chance(Observation.TANK_FLOW_BUBBLES, 0.50),
                new Chance(Observation.TANK_FLOW_WEAK, 0.30),
                new Chance(Observation.COLD_PRESSURE_FALLS, 0.55),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.70));
    }

    private static double left(double severity) {
        return 0.7 - 0.45 * severity;
    }
}

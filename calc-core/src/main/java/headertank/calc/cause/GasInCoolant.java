package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import java.util.List;

/** Combustion gas gets into the coolant: more heat, more pressure, less flow. */
public final class GasInCoolant implements CauseOfPractice {

    @Override
    public String id() {
        return "gas-in-coolant";
    }

    @Override
    public Message name() {
        return CauseText.GAS_IN_COOLANT.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return 6;
    }

    @Override
    public Fault on(Fault car, double severity) {
        return car.heated(1.05 + 0.3 * severity)
                .scaled(BuildField.PUMP_FLOW, 0.95 - 0.35 * severity)
                .scaled(BuildField.PUMP_HEAD, 0.95 - 0.35 * severity);
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_BY_NOTHING, 0.55),
                new Chance(Observation.STARTED_AT_ONCE, 0.60),
                new Chance(Observation.ENGINE_ROUGH, 0.55),
                new Chance(Observation.GAS_FOUND, 0.90),
                new Chance(Observation.LOSS_SOME, 0.40),
                new Chance(Observation.LOSS_MUCH, 0.35),
                new Chance(Observation.NEEDLE_SHOT_UP, 0.45),
                new Chance(Observation.NEEDLE_JUMPED, 0.20),
                new Chance(Observation.TANK_FLOW_BUBBLES, 0.75),
                new Chance(Observation.LEVEL_LOW, 0.60),
                new Chance(Observation.COLD_PRESSURE_FALLS, 0.40),
                new Chance(Observation.HEATER_COLD, 0.25),
                new Chance(Observation.FORCED_FAN_STAYS_HOT, 0.70));
    }
}

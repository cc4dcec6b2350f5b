package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.result.Balance;
import headertank.calc.sensor.SensorMount;
import headertank.calc.sensor.SensorReading;
import headertank.calc.verdict.DutyVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The gauge or the fan sensor sits where the coolant may stand still. */
public final class SensorInHose implements RiskRule {

    @Override
    public String id() {
        return "sensor-in-hose";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "mixing of the sensor volume, derived; place of the sensor: common practice, no source";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        boolean gauge = isAway(car, BuildField.GAUGE_SENSOR);
        boolean fan = isAway(car, BuildField.FAN_SENSOR);
        if (!gauge && !fan) {
            return Optional.empty();
        }
        BuildField which = gauge ? BuildField.GAUGE_SENSOR : BuildField.FAN_SENSOR;
        SensorPlacement place = car.resolved().option(which, SensorPlacement.class);
        List<Flag.Consequence> consequences = new ArrayList<>();
        for (DutyVerdict d : car.duties()) {
            OperatingPoint p = d.outcome().deciding().point();
            if (d.outcome().point(p.id()).balance() instanceof Balance.Steady s) {
                SensorReading running = SensorReading.of(
                        place,
                        SensorMount.WETTED,
                        s.engineOutK(),
                        s.coolant().radiatorOutK(),
                        s.ambientK(),
                        s.coolant().radiatorM3PerS());
                consequences.add(new Flag.Consequence(
                        "reading minus coolant while it flows", d.duty().id(), running.offsetK(), "K"));
                double still = SensorReading.step(
                        running.steadyK(), s.ambientK(), SensorReading.lagS(place, SensorMount.WETTED, 0), 120);
                consequences.add(new Flag.Consequence(
                        "reading minus coolant two minutes after the flow stopped",
                        d.duty().id(),
                        still - s.engineOutK(),
                        "K"));
            }
        }
        if (fan) {
            consequences.addAll(car.gainedBy(
                    "margin gained with the fan sensor in the block",
                    car.resolved().with(BuildField.FAN_SENSOR, SensorPlacement.BLOCK)));
        }
        return Optional.of(new Flag(
                id(),
                version(),
                gauge && fan
                        ? "Gauge and fan sensor away from the engine"
                        : gauge ? "Gauge sensor away from the engine" : "Fan sensor away from the engine",
                Flag.Weight.CONDITION,
                Flag.Scope.EVERY_DUTY,
                "The temperature that matters is the one in head or block. A sensor in a hose or a tank shows coolant"
                        + " that has to reach it first: when flow stops, or the thermostat is shut, it cools towards the"
                        + " air while the engine may boil.",
                consequences,
                "Move the sensor into head or block. Until then read the gauge as a lower bound and never trust it"
                        + " with the pump standing still.",
                "",
                "Let the engine cool before opening the system: coolant under pressure scalds. Fans can start by"
                        + " themselves, also with the engine off: pull their fuse before reaching in.",
                source()));
    }

    private static boolean isAway(RiskContext car, BuildField field) {
        return car.resolved().option(field, SensorPlacement.class).awayFromEngine();
    }
}

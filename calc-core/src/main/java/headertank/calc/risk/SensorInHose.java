package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
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
                        RuleText.SENSOR_IN_HOSE_ERROR_FLOWING.with(),
                        d.duty().id(),
                        SiFigure.difference(running.offsetK())));
                double still = SensorReading.step(
                        running.steadyK(), s.ambientK(), SensorReading.lagS(place, SensorMount.WETTED, 0), 120);
                consequences.add(new Flag.Consequence(
                        RuleText.SENSOR_IN_HOSE_ERROR_STANDING.with(),
                        d.duty().id(),
                        SiFigure.difference(still - s.engineOutK())));
            }
        }
        if (fan) {
            consequences.addAll(car.gainedBy(
                    RuleText.SENSOR_IN_HOSE_GAIN.with(),
                    car.resolved().with(BuildField.FAN_SENSOR, SensorPlacement.BLOCK)));
        }
        return Optional.of(new Flag(
                id(),
                version(),
                gauge && fan
                        ? RuleText.SENSOR_IN_HOSE_TITLE.with()
                        : gauge
                                ? RuleText.SENSOR_IN_HOSE_TITLE_GAUGE.with()
                                : RuleText.SENSOR_IN_HOSE_TITLE_FANS.with(),
                Flag.Weight.CONDITION,
                Flag.Scope.EVERY_DUTY,
                RuleText.SENSOR_IN_HOSE_REASON.with(),
                consequences,
                RuleText.SENSOR_IN_HOSE_ADVICE.with(),
                Message.NONE,
                RuleText.SENSOR_IN_HOSE_CAUTION.with(),
                source()));
    }

    private static boolean isAway(RiskContext car, BuildField field) {
        return car.resolved().option(field, SensorPlacement.class).awayFromEngine();
    }
}

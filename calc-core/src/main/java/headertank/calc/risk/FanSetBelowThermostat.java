package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.coolant.ThermostatSpec;
import headertank.calc.quantity.SiFigure;
import headertank.calc.rating.FanControlOf;
import headertank.calc.verdict.DutyVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The fans are set to start before the thermostat is open. */
public final class FanSetBelowThermostat implements RiskRule {

    @Override
    public String id() {
        return "fan-set-below-thermostat";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "solved balance; trade statement: common practice, no source";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        if (!car.resolved().is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC)
                || !car.resolved().is(BuildField.THERMOSTAT, ThermostatFitting.FITTED)) {
            return Optional.empty();
        }
        double off = FanControlOf.resolved(car.resolved()).stopK().orElse(Double.POSITIVE_INFINITY);
        double opening = car.resolved().value(BuildField.THERMOSTAT_OPENING);
        if (off >= opening) {
            return Optional.empty();
        }
        List<Flag.Consequence> consequences = new ArrayList<>();
        consequences.add(new Flag.Consequence(
                RuleText.FAN_SET_BELOW_THERMOSTAT_FANS_FROM.with(), "", SiFigure.temperature(off)));
        consequences.add(new Flag.Consequence(
                RuleText.FAN_SET_BELOW_THERMOSTAT_OPENS_AT.with(), "", SiFigure.temperature(opening)));
        consequences.add(new Flag.Consequence(
                RuleText.FAN_SET_BELOW_THERMOSTAT_OPEN_AT.with(),
                "",
                SiFigure.temperature(opening + ThermostatSpec.DEFAULT_WIDTH_K)));
        for (DutyVerdict d : car.duties()) {
            d.outcome()
                    .run()
                    .ifPresent(run -> consequences.add(new Flag.Consequence(
                            RuleText.FAN_SET_BELOW_THERMOSTAT_FAN_CHARGE.with(),
                            d.duty().id(),
                            SiFigure.ampereHours(run.charge().fanAmpereHours()))));
        }
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.FAN_SET_BELOW_THERMOSTAT_TITLE.with(),
                Flag.Weight.REMARK,
                Flag.Scope.IN_THE_MARGINS,
                RuleText.FAN_SET_BELOW_THERMOSTAT_REASON.with(),
                consequences,
                RuleText.FAN_SET_BELOW_THERMOSTAT_ADVICE.with(SiFigure.difference(5)),
                RuleText.FAN_SET_BELOW_THERMOSTAT_TRADE.with(),
                RuleText.FAN_SET_BELOW_THERMOSTAT_CAUTION.with(),
                source()));
    }
}

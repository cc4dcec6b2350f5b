package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.coolant.ThermostatSpec;
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
        consequences.add(new Flag.Consequence("fans run from", "", off, "K absolute"));
        consequences.add(new Flag.Consequence("thermostat begins to open at", "", opening, "K absolute"));
        consequences.add(new Flag.Consequence(
                "thermostat fully open at", "", opening + ThermostatSpec.DEFAULT_WIDTH_K, "K absolute"));
        for (DutyVerdict d : car.duties()) {
            d.outcome()
                    .run()
                    .ifPresent(run -> consequences.add(new Flag.Consequence(
                            "charge taken by the fans in one event", d.duty().id(), run.fanAmpereHours(), "Ah")));
        }
        return Optional.of(new Flag(
                id(),
                version(),
                "Fans run before the thermostat opens",
                Flag.Weight.REMARK,
                Flag.Scope.IN_THE_MARGINS,
                "Below its opening temperature the thermostat keeps the coolant out of the radiator: fans that already run"
                        + " there cool a radiator that carries next to nothing, and in traffic they never stop. Before a run"
                        + " a low set point does buy degrees, because it pre-cools.",
                consequences,
                "On the street set the fans at least 5 K above the thermostat's opening; for drift a low set point in the"
                        + " queue is a fair trade of charge for degrees.",
                "Many say that a lower set point is always safer.",
                "Fans can start by themselves, also with the engine off: pull their fuse before reaching in.",
                source()));
    }
}

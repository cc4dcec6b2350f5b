package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.control.FanControlSpec;
import headertank.calc.electric.AlternatorSpec;
import headertank.calc.rating.FanControlOf;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.StandardPolicy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Fans that start at once ask more than the alternator gives. */
public final class AbruptFanStart implements RiskRule {

    @Override
    public String id() {
        return "abrupt-fan-start";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "25 A running and 30 A at the start of a big fan: common practice, no source; alternator curve: modelling choice";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        FanControlSpec control = FanControlOf.resolved(car.resolved());
        if (!car.resolved().is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC)
                || control instanceof FanControlSpec.Ramp
                || control instanceof FanControlSpec.Table) {
            return Optional.empty();
        }
        double count = car.resolved().value(BuildField.FAN_COUNT);
        double start = count * startA(car.resolved(), control);
        double base = car.resolved().value(BuildField.BASE_LOAD);
        double idle = AlternatorSpec.of(car.resolved().value(BuildField.ALTERNATOR), base)
                .outputA(1);
        double beyond = base + start - idle;
        if (beyond <= 0) {
            return Optional.empty();
        }
        double running = count * car.resolved().value(BuildField.FAN_CURRENT);
        List<Flag.Consequence> consequences = new ArrayList<>();
        consequences.add(new Flag.Consequence("all fans at the moment they start", "", start, "A"));
        consequences.add(new Flag.Consequence("what the alternator gives at idle", "", idle, "A"));
        consequences.add(new Flag.Consequence("from the battery at the start", "", beyond, "A"));
        consequences.add(new Flag.Consequence(
                "from the battery while they run at idle", "", Math.max(0, base + running - idle), "A"));
        for (DutyVerdict d : car.duties()) {
            d.outcome().run().ifPresent(run -> {
                consequences.add(new Flag.Consequence(
                        "charge from the battery in one event", d.duty().id(), run.batteryAmpereHours(), "Ah"));
                consequences.add(
                        new Flag.Consequence("fan starts in one event", d.duty().id(), run.fanStarts(), "-"));
            });
        }
        return Optional.of(new Flag(
                id(),
                version(),
                "Fans start abruptly beyond the alternator",
                base + running - idle > StandardPolicy.GO_DEFICIT_A ? Flag.Weight.CONDITION : Flag.Weight.REMARK,
                Flag.Scope.IN_THE_MARGINS,
                "A relay starts the fans in one moment, and they ask more than the alternator gives at idle: the voltage dips,"
                        + " the fans themselves slow down, and the battery pays. A ramp starts them one step at a time.",
                consequences,
                "Use a ramp or start the fans one after the other, raise the idle speed, or fit a larger alternator. Size"
                        + " wire, fuse and relay for three to five times the running current for a moment.",
                "",
                "Fans can start by themselves, also with the engine off: pull their fuse before reaching in. Undersized wire on a fan circuit can start a fire.",
                source()));
    }

    /**
     * @return current of one fan at its worst start [A]. Of two steps, the first starts its share and the second the rest while
     *     that runs; current goes with the square of the duty, as in the balance (modelling choice)
     */
    private static double startA(Resolved r, FanControlSpec control) {
        double start = r.value(BuildField.FAN_START_CURRENT);
        if (!(control instanceof FanControlSpec.TwoStep steps)) {
            return start;
        }
        double share = steps.lowDuty() * steps.lowDuty();
        return Math.max(share * start, share * r.value(BuildField.FAN_CURRENT) + (1 - share) * start);
    }
}

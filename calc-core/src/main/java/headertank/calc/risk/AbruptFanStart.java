package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.control.FanControlSpec;
import headertank.calc.electric.AlternatorSpec;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
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
        consequences.add(
                new Flag.Consequence(RuleText.ABRUPT_FAN_START_ALL_FANS_STARTING.with(), "", SiFigure.current(start)));
        consequences.add(
                new Flag.Consequence(RuleText.ABRUPT_FAN_START_ALTERNATOR_AT_IDLE.with(), "", SiFigure.current(idle)));
        consequences.add(
                new Flag.Consequence(RuleText.ABRUPT_FAN_START_BATTERY_AT_START.with(), "", SiFigure.current(beyond)));
        consequences.add(new Flag.Consequence(
                RuleText.ABRUPT_FAN_START_BATTERY_WHILE_RUNNING.with(),
                "",
                SiFigure.current(Math.max(0, base + running - idle))));
        for (DutyVerdict d : car.duties()) {
            d.outcome().run().ifPresent(run -> {
                consequences.add(new Flag.Consequence(
                        RuleText.ABRUPT_FAN_START_BATTERY_CHARGE.with(),
                        d.duty().id(),
                        SiFigure.ampereHours(run.charge().batteryAmpereHours())));
                consequences.add(new Flag.Consequence(
                        RuleText.ABRUPT_FAN_START_STARTS.with(), d.duty().id(), SiFigure.count(run.fanStarts())));
            });
        }
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.ABRUPT_FAN_START_TITLE.with(),
                base + running - idle > StandardPolicy.GO_DEFICIT_A ? Flag.Weight.CONDITION : Flag.Weight.REMARK,
                Flag.Scope.IN_THE_MARGINS,
                RuleText.ABRUPT_FAN_START_REASON.with(),
                consequences,
                RuleText.ABRUPT_FAN_START_ADVICE.with(),
                Message.NONE,
                RuleText.ABRUPT_FAN_START_CAUTION.with(),
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

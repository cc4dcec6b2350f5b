package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.fluid.Coolant;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import headertank.calc.rating.CoolantOf;
import java.util.List;
import java.util.Optional;

/**
 * The coolant freezes on the coldest day, or is within 5 K of it. Only a day that somebody named, at the desk or as the shop's own
 * figure, holds a car back; where the class of car stands in for it, the rule asks how cold it gets and remarks what is at stake:
 * a car that leaves the winter in a heated hall has nothing to clear up.
 */
public final class CoolantFreezes implements RiskRule {

    private static final double CLOSE_K = 5;

    @Override
    public String id() {
        return "coolant-freezes";
    }

    @Override
    public String version() {
        return "2";
    }

    @Override
    public String source() {
        return "freezing points: ASHRAE tables and Melinder 2010";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        Coolant coolant = CoolantOf.resolved(car.resolved());
        double freezing = coolant.freezingK();
        double coldest = car.resolved().value(BuildField.LOWEST_AMBIENT);
        double margin = coldest - freezing;
        if (margin >= CLOSE_K) {
            return Optional.empty();
        }
        boolean named = !car.resolved().isOfClass(BuildField.LOWEST_AMBIENT);
        return Optional.of(new Flag(
                id(),
                version(),
                title(named, margin < 0),
                !named ? Flag.Weight.REMARK : margin < 0 ? Flag.Weight.STOP : Flag.Weight.CONDITION,
                Flag.Scope.EVERY_DUTY,
                RuleText.COOLANT_FREEZES_REASON.with(),
                List.of(
                        new Flag.Consequence(
                                RuleText.COOLANT_FREEZES_FREEZING_POINT.with(), "", SiFigure.temperature(freezing)),
                        new Flag.Consequence(
                                named
                                        ? RuleText.COOLANT_FREEZES_COLDEST_DAY.with()
                                        : RuleText.COOLANT_FREEZES_ASSUMED_DAY.with(),
                                "",
                                SiFigure.temperature(coldest)),
                        new Flag.Consequence(
                                RuleText.COOLANT_FREEZES_ABOVE_FREEZING.with(), "", SiFigure.difference(margin))),
                named ? RuleText.COOLANT_FREEZES_ADVICE.with() : RuleText.COOLANT_FREEZES_ASK_ADVICE.with(),
                Message.NONE,
                RuleText.COOLANT_FREEZES_CAUTION.with(),
                source()));
    }

    private static Message title(boolean named, boolean freezes) {
        if (named) {
            return freezes ? RuleText.COOLANT_FREEZES_TITLE.with() : RuleText.COOLANT_FREEZES_TITLE_CLOSE.with();
        }
        return freezes ? RuleText.COOLANT_FREEZES_ASK_TITLE.with() : RuleText.COOLANT_FREEZES_ASK_TITLE_CLOSE.with();
    }
}

package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.fluid.Coolant;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import headertank.calc.rating.CoolantOf;
import java.util.List;
import java.util.Optional;

/** The coolant freezes on the coldest day. */
public final class CoolantFreezes implements RiskRule {

    @Override
    public String id() {
        return "coolant-freezes";
    }

    @Override
    public String version() {
        return "1";
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
        if (margin >= 5) {
            return Optional.empty();
        }
        return Optional.of(new Flag(
                id(),
                version(),
                margin < 0 ? RuleText.COOLANT_FREEZES_TITLE.with() : RuleText.COOLANT_FREEZES_TITLE_CLOSE.with(),
                margin < 0 ? Flag.Weight.STOP : Flag.Weight.CONDITION,
                Flag.Scope.EVERY_DUTY,
                RuleText.COOLANT_FREEZES_REASON.with(),
                List.of(
                        new Flag.Consequence(
                                RuleText.COOLANT_FREEZES_FREEZING_POINT.with(), "", SiFigure.temperature(freezing)),
                        new Flag.Consequence(
                                RuleText.COOLANT_FREEZES_COLDEST_DAY.with(), "", SiFigure.temperature(coldest)),
                        new Flag.Consequence(
                                RuleText.COOLANT_FREEZES_ABOVE_FREEZING.with(), "", SiFigure.difference(margin))),
                RuleText.COOLANT_FREEZES_ADVICE.with(),
                Message.NONE,
                RuleText.COOLANT_FREEZES_CAUTION.with(),
                source()));
    }
}

package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.fluid.Coolant;
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
                margin < 0 ? "Coolant freezes on the coldest day" : "Coolant close to freezing on the coldest day",
                margin < 0 ? Flag.Weight.STOP : Flag.Weight.CONDITION,
                Flag.Scope.EVERY_DUTY,
                "Ice forms below the freezing point of the mixture; it blocks the flow at the first start and can crack block"
                        + " and core.",
                List.of(
                        new Flag.Consequence("freezing point of the coolant", "", freezing, "K absolute"),
                        new Flag.Consequence("coldest day stated", "", coldest, "K absolute"),
                        new Flag.Consequence("coldest day above the freezing point", "", margin, "K")),
                "Raise the share of glycol, or drain the car for the winter.",
                "",
                "Glycol is poisonous and tempting to animals: collect what is drained and dispose of it by local rules.",
                source()));
    }
}

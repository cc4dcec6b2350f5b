package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.coolant.BoilingMargin;
import headertank.calc.coolant.PressureCap;
import headertank.calc.fluid.Atmosphere;
import headertank.calc.fluid.Coolant;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import headertank.calc.rating.CoolantOf;
import headertank.calc.result.Balance;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.StandardPolicy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cap holds less pressure than the coolant needs. */
public final class CapTooWeak implements RiskRule {

    @Override
    public String id() {
        return "cap-too-weak";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "bubble point of the mixture; 10 K of bulk margin: common practice, no source";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        double least = Double.POSITIVE_INFINITY;
        double hottest = Double.NEGATIVE_INFINITY;
        List<Flag.Consequence> consequences = new ArrayList<>();
        for (DutyVerdict d : car.duties()) {
            double margin = d.outcome().boilingMarginK();
            consequences.add(new Flag.Consequence(
                    RuleText.CAP_TOO_WEAK_BOILING_MARGIN.with(), d.duty().id(), SiFigure.difference(margin)));
            least = Math.min(least, margin);
            hottest = Math.max(hottest, hottestK(d));
        }
        if (least >= StandardPolicy.GO_BOILING_K || Double.isInfinite(hottest)) {
            return Optional.empty();
        }
        Coolant coolant = CoolantOf.resolved(car.resolved());
        double needed = BoilingMargin.requiredGaugePa(
                hottest,
                StandardPolicy.GO_BOILING_K,
                Atmosphere.pressurePa(car.resolved().value(BuildField.ALTITUDE)),
                coolant::vapourPressurePa);
        consequences.add(new Flag.Consequence(
                RuleText.CAP_TOO_WEAK_PRESSURE_NEEDED.with(SiFigure.difference(StandardPolicy.GO_BOILING_K)),
                "",
                new SiFigure(needed, FigureKind.PRESSURE_GAUGE)));
        PressureCap cap = new PressureCap(
                car.resolved().value(BuildField.CAP_PRESSURE), car.resolved().value(BuildField.CAP_HELD));
        consequences.add(new Flag.Consequence(
                RuleText.CAP_TOO_WEAK_PRESSURE_HELD.with(),
                "",
                new SiFigure(cap.heldGaugePa(), FigureKind.PRESSURE_GAUGE)));
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.CAP_TOO_WEAK_TITLE.with(),
                least < StandardPolicy.LEAST_BOILING_K ? Flag.Weight.STOP : Flag.Weight.CONDITION,
                Flag.Scope.IN_THE_MARGINS,
                RuleText.CAP_TOO_WEAK_REASON.with(SiFigure.difference(StandardPolicy.GO_BOILING_K)),
                consequences,
                RuleText.CAP_TOO_WEAK_ADVICE.with(),
                Message.NONE,
                RuleText.CAP_TOO_WEAK_CAUTION.with(),
                source()));
    }

    private static double hottestK(DutyVerdict d) {
        double hottest = d.outcome().run().map(r -> r.peaks().coolantK()).orElse(Double.NEGATIVE_INFINITY);
        return !d.outcome().decidedByRun() && d.outcome().deciding().balance() instanceof Balance.Steady s
                ? Math.max(hottest, s.engineOutK())
                : hottest;
    }
}

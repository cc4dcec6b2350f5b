package headertank.calc.risk;

import headertank.calc.oil.OilBalance;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.SiFigure;
import headertank.calc.result.Balance;
import headertank.calc.verdict.DutyVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The oil runs hotter than it should. */
public final class OilOverTarget implements RiskRule {

    @Override
    public String id() {
        return "oil-over-target";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "limits: common practice, no source; oil temperature solved";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        List<Flag.Consequence> consequences = new ArrayList<>();
        double hottest = Double.NEGATIVE_INFINITY;
        for (DutyVerdict d : car.duties()) {
            double oil = d.outcome().decidedByRun() && d.outcome().run().isPresent()
                    ? d.outcome().run().get().peaks().oilK()
                    : d.outcome().deciding().balance() instanceof Balance.Steady s
                            ? s.oil().oilK()
                            : Double.NaN;
            if (!Double.isNaN(oil)) {
                consequences.add(new Flag.Consequence(
                        RuleText.OIL_OVER_TARGET_TEMPERATURE.with(), d.duty().id(), SiFigure.temperature(oil)));
                hottest = Math.max(hottest, oil);
            }
        }
        if (hottest < OilBalance.CAUTION_K) {
            return Optional.empty();
        }
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.OIL_OVER_TARGET_TITLE.with(),
                hottest >= OilBalance.NO_GO_K ? Flag.Weight.STOP : Flag.Weight.CONDITION,
                Flag.Scope.IN_THE_MARGINS,
                RuleText.OIL_OVER_TARGET_REASON.with(
                        SiFigure.temperature(Physics.kelvin(100)),
                        SiFigure.temperature(OilBalance.CAUTION_K),
                        SiFigure.temperature(OilBalance.NO_GO_K)),
                consequences,
                RuleText.OIL_OVER_TARGET_ADVICE.with(),
                Message.NONE,
                RuleText.OIL_OVER_TARGET_CAUTION.with(),
                source()));
    }
}

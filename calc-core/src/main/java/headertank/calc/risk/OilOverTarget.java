package headertank.calc.risk;

import headertank.calc.oil.OilBalance;
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
                    ? d.outcome().run().get().peakOilK()
                    : d.outcome().deciding().balance() instanceof Balance.Steady s
                            ? s.oil().oilK()
                            : Double.NaN;
            if (!Double.isNaN(oil)) {
                consequences.add(
                        new Flag.Consequence("oil temperature", d.duty().id(), oil, "K absolute"));
                hottest = Math.max(hottest, oil);
            }
        }
        if (hottest < OilBalance.CAUTION_K) {
            return Optional.empty();
        }
        return Optional.of(new Flag(
                id(),
                version(),
                "Oil over its limit",
                hottest >= OilBalance.NO_GO_K ? Flag.Weight.STOP : Flag.Weight.CONDITION,
                Flag.Scope.IN_THE_MARGINS,
                "Oil wants to run at about 100 C. Above 130 C its film thins quickly, above 150 C it is being"
                        + " destroyed.",
                consequences,
                "Fit an oil cooler, enlarge it, or give it air of its own; check the oil after the first hard day.",
                "",
                "Hot oil burns skin and catches fire on an exhaust: check every joint of the cooler under pressure.",
                source()));
    }
}

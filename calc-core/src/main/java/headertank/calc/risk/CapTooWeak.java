package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.coolant.BoilingMargin;
import headertank.calc.coolant.PressureCap;
import headertank.calc.fluid.Atmosphere;
import headertank.calc.fluid.Coolant;
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
            consequences.add(new Flag.Consequence("boiling margin", d.duty().id(), margin, "K"));
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
        consequences.add(new Flag.Consequence("cap pressure that 10 K of margin need", "", needed, "Pa"));
        PressureCap cap = new PressureCap(
                car.resolved().value(BuildField.CAP_PRESSURE), car.resolved().value(BuildField.CAP_HELD));
        consequences.add(new Flag.Consequence("cap pressure that this one holds", "", cap.heldGaugePa(), "Pa"));
        return Optional.of(new Flag(
                id(),
                version(),
                "Cap too weak",
                least < StandardPolicy.LEAST_BOILING_K ? Flag.Weight.STOP : Flag.Weight.CONDITION,
                Flag.Scope.IN_THE_MARGINS,
                "At the cap's pressure and this altitude the coolant comes within 10 K of boiling. Vapour carries"
                        + " little heat, drives coolant out and blinds the pump; from there the temperature runs away.",
                consequences,
                "Fit a cap for the pressure that is needed if radiator, heater and hoses are rated for it; else lower"
                        + " the temperature.",
                "",
                "Let the engine cool before opening the system: coolant under pressure scalds.",
                source()));
    }

    private static double hottestK(DutyVerdict d) {
        double hottest = d.outcome().run().map(r -> r.peakCoolantK()).orElse(Double.NEGATIVE_INFINITY);
        return !d.outcome().decidedByRun() && d.outcome().deciding().balance() instanceof Balance.Steady s
                ? Math.max(hottest, s.engineOutK())
                : hottest;
    }
}

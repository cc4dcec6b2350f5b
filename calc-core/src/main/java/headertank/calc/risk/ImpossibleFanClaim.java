package headertank.calc.risk;

import headertank.calc.air.FanClaim;
import headertank.calc.air.FanSpec;
import headertank.calc.build.BuildField;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The stated fan flow needs more power than the fan draws. */
public final class ImpossibleFanClaim implements RiskRule {

    @Override
    public String id() {
        return "impossible-fan-claim";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "kinetic power of the jet, derived; limits of fan efficiency: modelling choice";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        if (!car.resolved().is(BuildField.FAN_DRIVE, "ELECTRIC")
                || !(car.build().entries().get(BuildField.FAN_FLOW) instanceof Stated flow)
                || flow.from() == Provenance.MEASURED) {
            return Optional.empty();
        }
        double diameter = car.resolved().value(BuildField.FAN_DIAMETER);
        FanSpec claimed = FanSpec.of(
                1,
                flow.si(),
                car.resolved().value(BuildField.FAN_SHUT_OFF),
                diameter,
                FanSpec.USUAL_HUB_SHARE * diameter);
        FanClaim claim = FanClaim.check(claimed, 13, car.resolved().value(BuildField.FAN_CURRENT), false);
        if (claim.verdict() == FanClaim.Verdict.PLAUSIBLE || claim.ratio() < 0.35) {
            return Optional.empty();
        }
        List<Flag.Consequence> consequences = new ArrayList<>();
        consequences.add(new Flag.Consequence("power of the jet at the stated flow", "", claim.kineticW(), "W"));
        consequences.add(new Flag.Consequence("electric power at the stated current", "", claim.electricW(), "W"));
        consequences.add(new Flag.Consequence(
                "flow that this current can deliver", "", claim.correctedFreeFlowM3PerS(), "m3/s"));
        consequences.addAll(car.gainedBy(
                "margin at the flow that is possible, against the rating with the stated flow",
                car.resolved()
                        .with(
                                BuildField.FAN_FLOW,
                                BuildField.FAN_FLOW.allowed().clamp(claim.correctedFreeFlowM3PerS()))));
        return Optional.of(new Flag(
                id(),
                version(),
                "Stated fan flow that its current cannot deliver",
                Flag.Weight.CONDITION,
                Flag.Scope.EVERY_DUTY,
                "The air leaving the fan carries kinetic energy; at the stated flow that alone takes more than a fan of this"
                        + " kind makes of its current.",
                consequences,
                "Ask for the fan's curve, or measure current and flow; until then count on the possible flow.",
                "",
                "",
                source()));
    }
}

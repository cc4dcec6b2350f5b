package headertank.calc.risk;

import headertank.calc.air.Fan;
import headertank.calc.air.FanClaim;
import headertank.calc.air.FanFit;
import headertank.calc.air.FanSpec;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The stated fan flow needs more power than the fan makes of its current (a condition), or more than fans usually do (a
 * remark).
 */
public final class ImpossibleFanClaim implements RiskRule {

    @Override
    public String id() {
        return "impossible-fan-claim";
    }

    @Override
    public String version() {
        return "2";
    }

    @Override
    public String source() {
        return "kinetic power of the jet, derived; limits of fan efficiency: modelling choice";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        if (!car.resolved().is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC)
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
        FanClaim claim = FanClaim.check(claimed, Fan.REFERENCE_V, car.resolved().value(BuildField.FAN_CURRENT), false);
        return switch (claim.verdict()) {
            case IMPOSSIBLE -> Optional.of(impossible(car, claim));
            case DOUBTFUL -> Optional.of(doubtful(car, claim, claimed.annulusM2()));
            case PLAUSIBLE, MODEST -> Optional.empty();
        };
    }

    private Flag impossible(RiskContext car, FanClaim claim) {
        List<Flag.Consequence> consequences = powers(claim);
        consequences.add(new Flag.Consequence(
                "flow that this current can deliver", "", claim.correctedFreeFlowM3PerS(), "m3/s"));
        consequences.addAll(car.gainedBy(
                "margin at the flow that is possible, against the rating with the stated flow",
                withFlow(car, claim.correctedFreeFlowM3PerS())));
        return flag(
                "Stated fan flow that its current cannot deliver",
                Flag.Weight.CONDITION,
                "The air leaving the fan carries kinetic energy; at the stated flow that alone takes more than a fan of this"
                        + " kind makes of its current.",
                consequences,
                "Ask for the fan's curve, or measure current and flow; until then count on the possible flow.");
    }

    private Flag doubtful(RiskContext car, FanClaim claim, double annulusM2) {
        double usual = FanFit.freeFlowM3PerS(claim.electricW(), annulusM2);
        List<Flag.Consequence> consequences = powers(claim);
        consequences.add(new Flag.Consequence("flow that is usual for this current and diameter", "", usual, "m3/s"));
        consequences.addAll(car.gainedBy(
                "margin at the usual flow, against the rating with the stated flow", withFlow(car, usual)));
        return flag(
                "Stated fan flow is high for its current",
                Flag.Weight.REMARK,
                "A fan can do this, but most do not: at the stated flow the air leaving it carries more than 35 % of the"
                        + " electric power as kinetic energy, where 10 to 35 % are usual.",
                consequences,
                "Ask for the fan's curve, or measure current and flow, before a margin is built on this flow.");
    }

    private static List<Flag.Consequence> powers(FanClaim claim) {
        List<Flag.Consequence> powers = new ArrayList<>();
        powers.add(new Flag.Consequence("power of the jet at the stated flow", "", claim.kineticW(), "W"));
        powers.add(new Flag.Consequence("electric power at the stated current", "", claim.electricW(), "W"));
        return powers;
    }

    private static Resolved withFlow(RiskContext car, double flowM3PerS) {
        return car.resolved()
                .with(BuildField.FAN_FLOW, BuildField.FAN_FLOW.allowed().clamp(flowM3PerS));
    }

    private Flag flag(
            String title, Flag.Weight weight, String reason, List<Flag.Consequence> consequences, String advice) {
        return new Flag(
                id(), version(), title, weight, Flag.Scope.EVERY_DUTY, reason, consequences, advice, "", "", source());
    }
}

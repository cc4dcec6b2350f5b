package headertank.calc.risk;

import headertank.calc.air.Fan;
import headertank.calc.air.FanClaim;
import headertank.calc.air.FanFit;
import headertank.calc.air.FanSpec;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.SiFigure;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A fan's flow needs more power than the fan makes of its current (a condition), or more than fans usually do (a remark), whoever
 * says so: a measured flow that cannot be contradicts the measured current. Only a current and a diameter that somebody vouches for
 * prove it; where either is assumed or guessed, what is worth measuring is remarked.
 */
public final class ImpossibleFanClaim implements RiskRule {

    @Override
    public String id() {
        return "impossible-fan-claim";
    }

    @Override
    public String version() {
        return "3";
    }

    @Override
    public String source() {
        return "kinetic power of the jet, derived; limits of fan efficiency: modelling choice";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        if (!car.resolved().is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC)
                || !(car.build().entries().get(BuildField.FAN_FLOW) instanceof Stated flow)) {
            return Optional.empty();
        }
        double diameter = si(car, BuildField.FAN_DIAMETER);
        FanSpec claimed = FanSpec.of(
                1,
                flow.si(),
                car.resolved().value(BuildField.FAN_SHUT_OFF),
                diameter,
                FanSpec.USUAL_HUB_SHARE * diameter);
        FanClaim claim = FanClaim.check(claimed, Fan.REFERENCE_V, si(car, BuildField.FAN_CURRENT), false);
        if (!isVouchedFor(car, BuildField.FAN_CURRENT) || !isVouchedFor(car, BuildField.FAN_DIAMETER)) {
            return claim.verdict() == FanClaim.Verdict.IMPOSSIBLE
                    ? Optional.of(unproven(car, claim))
                    : Optional.empty();
        }
        boolean measured = flow.from() == Provenance.MEASURED;
        return switch (claim.verdict()) {
            case IMPOSSIBLE -> Optional.of(impossible(car, claim, measured));
            case DOUBTFUL -> measured ? Optional.empty() : Optional.of(doubtful(car, claim, claimed.annulusM2()));
            case PLAUSIBLE, MODEST -> Optional.empty();
        };
    }

    /** As it was stated, before what its source usually adds is taken off; else what stands in for it. */
    private static double si(RiskContext car, BuildField field) {
        return car.build().entries().get(field) instanceof Stated s
                ? s.si()
                : car.resolved().value(field);
    }

    private static boolean isVouchedFor(RiskContext car, BuildField field) {
        return car.resolved()
                .from(field)
                .filter(from -> from != Provenance.GUESSED)
                .isPresent();
    }

    private Flag unproven(RiskContext car, FanClaim claim) {
        List<Flag.Consequence> consequences = new ArrayList<>();
        consequences.add(new Flag.Consequence(
                RuleText.IMPOSSIBLE_FAN_CLAIM_JET_POWER.with(), "", SiFigure.power(claim.kineticW())));
        consequences.add(new Flag.Consequence(
                RuleText.IMPOSSIBLE_FAN_CLAIM_LEAST_CURRENT.with(),
                "",
                SiFigure.current(claim.leastCurrentA(Fan.REFERENCE_V, false))));
        consequences.add(new Flag.Consequence(
                isVouchedFor(car, BuildField.FAN_CURRENT)
                        ? RuleText.IMPOSSIBLE_FAN_CLAIM_CURRENT.with()
                        : RuleText.IMPOSSIBLE_FAN_CLAIM_ASSUMED_CURRENT.with(),
                "",
                SiFigure.current(si(car, BuildField.FAN_CURRENT))));
        if (!isVouchedFor(car, BuildField.FAN_DIAMETER)) {
            consequences.add(new Flag.Consequence(
                    RuleText.IMPOSSIBLE_FAN_CLAIM_ASSUMED_DIAMETER.with(),
                    "",
                    new SiFigure(si(car, BuildField.FAN_DIAMETER), FigureKind.LENGTH)));
        }
        return flag(
                RuleText.IMPOSSIBLE_FAN_CLAIM_UNPROVEN_TITLE.with(),
                Flag.Weight.REMARK,
                RuleText.IMPOSSIBLE_FAN_CLAIM_UNPROVEN_REASON.with(),
                consequences,
                RuleText.IMPOSSIBLE_FAN_CLAIM_UNPROVEN_ADVICE.with());
    }

    private Flag impossible(RiskContext car, FanClaim claim, boolean measured) {
        List<Flag.Consequence> consequences = powers(claim);
        consequences.add(new Flag.Consequence(
                RuleText.IMPOSSIBLE_FAN_CLAIM_POSSIBLE_FLOW.with(),
                "",
                new SiFigure(claim.correctedFreeFlowM3PerS(), FigureKind.AIR_FLOW)));
        consequences.addAll(car.gainedBy(
                RuleText.IMPOSSIBLE_FAN_CLAIM_GAIN_AT_POSSIBLE.with(), withFlow(car, claim.correctedFreeFlowM3PerS())));
        return flag(
                measured
                        ? RuleText.IMPOSSIBLE_FAN_CLAIM_MEASURED_TITLE.with()
                        : RuleText.IMPOSSIBLE_FAN_CLAIM_TITLE.with(),
                Flag.Weight.CONDITION,
                RuleText.IMPOSSIBLE_FAN_CLAIM_REASON.with(),
                consequences,
                measured
                        ? RuleText.IMPOSSIBLE_FAN_CLAIM_MEASURED_ADVICE.with()
                        : RuleText.IMPOSSIBLE_FAN_CLAIM_ADVICE.with());
    }

    private Flag doubtful(RiskContext car, FanClaim claim, double annulusM2) {
        double usual = FanFit.freeFlowM3PerS(claim.electricW(), annulusM2);
        List<Flag.Consequence> consequences = powers(claim);
        consequences.add(new Flag.Consequence(
                RuleText.IMPOSSIBLE_FAN_CLAIM_USUAL_FLOW.with(), "", new SiFigure(usual, FigureKind.AIR_FLOW)));
        consequences.addAll(car.gainedBy(RuleText.IMPOSSIBLE_FAN_CLAIM_GAIN_AT_USUAL.with(), withFlow(car, usual)));
        return flag(
                RuleText.IMPOSSIBLE_FAN_CLAIM_DOUBTFUL_TITLE.with(),
                Flag.Weight.REMARK,
                RuleText.IMPOSSIBLE_FAN_CLAIM_DOUBTFUL_REASON.with(),
                consequences,
                RuleText.IMPOSSIBLE_FAN_CLAIM_DOUBTFUL_ADVICE.with());
    }

    private static List<Flag.Consequence> powers(FanClaim claim) {
        List<Flag.Consequence> powers = new ArrayList<>();
        powers.add(new Flag.Consequence(
                RuleText.IMPOSSIBLE_FAN_CLAIM_JET_POWER.with(), "", SiFigure.power(claim.kineticW())));
        powers.add(new Flag.Consequence(
                RuleText.IMPOSSIBLE_FAN_CLAIM_ELECTRIC_POWER.with(), "", SiFigure.power(claim.electricW())));
        return powers;
    }

    private static Resolved withFlow(RiskContext car, double flowM3PerS) {
        return car.resolved()
                .with(BuildField.FAN_FLOW, BuildField.FAN_FLOW.allowed().clamp(flowM3PerS));
    }

    private Flag flag(
            Message title, Flag.Weight weight, Message reason, List<Flag.Consequence> consequences, Message advice) {
        return new Flag(
                id(),
                version(),
                title,
                weight,
                Flag.Scope.EVERY_DUTY,
                reason,
                consequences,
                advice,
                Message.NONE,
                RuleText.IMPOSSIBLE_FAN_CLAIM_CAUTION.with(),
                source());
    }
}

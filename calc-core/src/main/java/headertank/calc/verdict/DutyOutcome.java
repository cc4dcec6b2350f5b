package headertank.calc.verdict;

import headertank.calc.duty.Duty;
import headertank.calc.result.Distribution;
import headertank.calc.result.PointRating;
import headertank.calc.result.RunResult;
import java.util.List;
import java.util.Optional;

/**
 * What the physics says about a car at one duty, before a policy judges it.
 *
 * @param duty the duty
 * @param decidingPointId id of the operating point with the smallest margin
 * @param decidedByRun whether the margin comes from the run over time rather than from a steady state
 * @param coolantMarginK expected coolant margin that decides [K]; minus infinity when there is no steady state
 * @param marginSpread sampled coolant margin [K]; empty when the rating was asked for without uncertainty
 * @param probabilityTooHot probability that the coolant passes its limit [-]; NaN without uncertainty
 * @param probabilityBoils probability that the coolant boils at the cap [-]; NaN without uncertainty
 * @param boilingMarginK expected boiling margin that decides [K]
 * @param oilMarginK expected oil margin that decides [K]
 * @param oilSamples sampled oil margin [K]; empty when the rating was asked for without uncertainty
 * @param points every operating point at its steady state, i.e. what an endless stay would reach
 * @param run the run over time, for a duty with a schedule
 * @param sides what steady states and run say, each by itself
 */
public record DutyOutcome(
        Duty duty,
        String decidingPointId,
        boolean decidedByRun,
        double coolantMarginK,
        Optional<Distribution> marginSpread,
        double probabilityTooHot,
        double probabilityBoils,
        double boilingMarginK,
        double oilMarginK,
        Optional<Distribution> oilSamples,
        List<PointRating> points,
        Optional<RunResult> run,
        Sides sides) {

    /**
     * The two sides that a margin can come from.
     *
     * @param steadyPointId the operating point with the least margin at its steady state, of those that count for the duty;
     *     empty when none does
     * @param steadyMarginK coolant margin there [K]; infinite when none counts, minus infinity without a steady state
     * @param runMarginK coolant margin at the peak of the run [K]; NaN without a run
     */
    public record Sides(String steadyPointId, double steadyMarginK, double runMarginK) {}

    public DutyOutcome {
        points = List.copyOf(points);
    }

    /** @throws IllegalArgumentException when there is no such point */
    public PointRating point(String pointId) {
        return points.stream()
                .filter(p -> p.point().id().equals(pointId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no operating point " + pointId));
    }

    /** @return the operating point that decides */
    public PointRating deciding() {
        return point(decidingPointId);
    }

    /**
     * @param byK how much more margin of the coolant is expected given what is known of the car beside its values [K]
     * @param oilByK the same of the oil [K]
     * @return the same with its margins so much larger; without a steady state unchanged
     */
    public DutyOutcome expecting(double byK, double oilByK) {
        return new DutyOutcome(
                duty,
                decidingPointId,
                decidedByRun,
                coolantMarginK + byK,
                marginSpread,
                probabilityTooHot,
                probabilityBoils,
                boilingMarginK + byK,
                oilMarginK + oilByK,
                oilSamples,
                points,
                run,
                sides);
    }

    /**
     * This expectation of a car with something changed, as far from certain as the car that it was changed from: what is known of that
     * car beside its values counts for this one too, and its samples move with the expected margins.
     *
     * @param expected what is expected of the unchanged car by its values alone
     * @param rated the unchanged car, as it was rated
     * @return the same with the samples of the rated car; without them where either has no margin
     */
    public DutyOutcome asSureAs(DutyOutcome expected, DutyOutcome rated) {
        double by = coolantMarginK - expected.coolantMarginK;
        double oilBy = oilMarginK - expected.oilMarginK;
        if (!Double.isFinite(by) || !Double.isFinite(oilBy)) {
            return this;
        }
        return expecting(rated.coolantMarginK - expected.coolantMarginK, rated.oilMarginK - expected.oilMarginK)
                .withSamplesOf(rated, by, oilBy);
    }

    /**
     * The same car with something broken, which no value of it says.
     *
     * @param coolantK how much more margin the coolant has [K]
     * @param boilingK how much more it has until it boils [K]
     * @param oilK how much more margin the oil has [K]
     * @param brokenRun the run with it
     * @return this outcome, moved by so much with all its samples
     */
    public DutyOutcome broken(double coolantK, double boilingK, double oilK, RunResult brokenRun) {
        return new DutyOutcome(
                        duty,
                        decidingPointId,
                        true,
                        coolantMarginK + coolantK,
                        Optional.empty(),
                        Double.NaN,
                        Double.NaN,
                        boilingMarginK + boilingK,
                        oilMarginK + oilK,
                        Optional.empty(),
                        points,
                        Optional.of(brokenRun),
                        sides)
                .withSamplesOf(this, coolantK, oilK);
    }

    private DutyOutcome withSamplesOf(DutyOutcome other, double coolantByK, double oilByK) {
        if (other.marginSpread.isEmpty() || other.oilSamples.isEmpty()) {
            return this;
        }
        Distribution coolant = other.marginSpread.get().moved(coolantByK);
        return sampled(
                coolant,
                coolant.probabilityBelow(0),
                Double.NaN,
                other.oilSamples.get().moved(oilByK));
    }

    /** @return sampling error of the probability that the coolant passes its limit, one standard deviation [-]; NaN without */
    public double errorTooHot() {
        return marginSpread
                .map(m -> Distribution.standardError(probabilityTooHot, m.samples()))
                .orElse(Double.NaN);
    }

    /** @return the same with sampled figures */
    public DutyOutcome sampled(Distribution margin, double tooHot, double boils, Distribution oil) {
        return new DutyOutcome(
                duty,
                decidingPointId,
                decidedByRun,
                coolantMarginK,
                Optional.of(margin),
                tooHot,
                boils,
                boilingMarginK,
                oilMarginK,
                Optional.of(oil),
                points,
                run,
                sides);
    }
}

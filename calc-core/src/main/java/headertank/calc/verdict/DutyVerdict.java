package headertank.calc.verdict;

import headertank.calc.duty.Duty;
import headertank.calc.rating.PointRating;
import headertank.calc.transients.RunResult;
import headertank.calc.uncertainty.Distribution;
import java.util.List;
import java.util.Optional;

/**
 * A car at one duty.
 *
 * @param duty the duty
 * @param verdict go, go with conditions, no-go
 * @param decidingPointId id of the operating point with the smallest margin
 * @param decidedByRun whether the margin comes from the run over time rather than from a steady state
 * @param coolantMarginK expected coolant margin that decides [K]; minus infinity when there is no steady state
 * @param marginSpread sampled coolant margin [K]; empty when the rating was asked for without uncertainty
 * @param probabilityTooHot probability that the coolant passes its limit [-]; NaN without uncertainty
 * @param probabilityBoils probability that the coolant boils at the cap [-]; NaN without uncertainty
 * @param boilingMarginK expected boiling margin that decides [K]
 * @param oilMarginK expected oil margin that decides [K]
 * @param points every operating point at its steady state, i.e. what an endless stay would reach
 * @param run the run over time, for a duty with a schedule
 * @param findings what the verdict rests on, worst first
 */
public record DutyVerdict(
        Duty duty,
        Verdict verdict,
        String decidingPointId,
        boolean decidedByRun,
        double coolantMarginK,
        Optional<Distribution> marginSpread,
        double probabilityTooHot,
        double probabilityBoils,
        double boilingMarginK,
        double oilMarginK,
        List<PointRating> points,
        Optional<RunResult> run,
        List<Finding> findings) {

    public DutyVerdict {
        points = List.copyOf(points);
        findings = List.copyOf(findings);
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
}

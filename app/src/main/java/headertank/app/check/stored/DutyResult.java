package headertank.app.check.stored;

import com.fasterxml.jackson.annotation.JsonIgnore;
import headertank.app.check.stored.StoredMessage.Amount;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One duty of a stored check. All numbers in SI.
 *
 * @param decidingPoint id of the operating point with the smallest margin
 * @param decidedByRun whether the margin comes from the run over time
 * @param coolantMarginK expected coolant margin that decides [K]; minus infinity without a steady state
 * @param marginSpread its range; empty when the uncertainty was not computed
 * @param probabilityTooHot probability of passing the coolant limit [-], NaN when not computed
 * @param probabilityBoils probability of boiling at the cap [-], NaN when not computed
 * @param findings what the verdict rests on, worst first
 * @param points every operating point at its steady state
 * @param judgement steady margin and margin at the run's peak, and which of them count
 * @param run the run over time, for a duty with a schedule
 * @param whatIfs the same schedule with one thing changed or broken; for a duty with a schedule and electric fans
 * @param unknowns which numbers that nobody measured leave the margin most unsure, the worst first; empty in a check of before it
 *     was kept
 * @param hottestDay the hottest day on which the duty is expected to hold; empty in a check of before it was looked for
 */
public record DutyResult(
        String id,
        String label,
        StoredVerdict verdict,
        String decidingPoint,
        boolean decidedByRun,
        double coolantMarginK,
        Optional<Range> marginSpread,
        double probabilityTooHot,
        double probabilityBoils,
        double boilingMarginK,
        double oilMarginK,
        List<FindingLine> findings,
        List<PointResult> points,
        Optional<Judgement> judgement,
        Optional<StoredRun> run,
        List<WhatIf> whatIfs,
        Optional<List<Unknown>> unknowns,
        Optional<HottestDay> hottestDay) {

    public DutyResult {
        hottestDay = hottestDay == null ? Optional.empty() : hottestDay;
        marginSpread = marginSpread == null ? Optional.empty() : marginSpread;
        judgement = judgement == null ? Optional.empty() : judgement;
        run = run == null ? Optional.empty() : run;
        whatIfs = whatIfs == null ? List.of() : List.copyOf(whatIfs);
        findings = List.copyOf(findings);
        points = List.copyOf(points);
        unknowns = unknowns == null ? Optional.empty() : unknowns.map(List::copyOf);
    }

    /**
     * A number that nobody measured.
     *
     * @param field its key
     * @param guessed whether somebody guessed it; else it was assumed
     * @param marginK one standard deviation of the margin that it causes, at the steady point with the least margin [K]
     */
    public record Unknown(String field, boolean guessed, double marginK) {}

    /**
     * 5 %, 50 % and 95 % of the samples; infinite where a sample had no answer.
     *
     * @param samples how many there were; empty in a check of before each duty had its own number
     */
    public record Range(double low, double median, double high, Optional<Integer> samples) {
        public Range {
            samples = samples == null ? Optional.empty() : samples;
        }
    }

    /** @return samples of this duty, or those of the whole check where it has no number of its own */
    public int samples(int ofCheck) {
        return marginSpread.flatMap(Range::samples).orElse(ofCheck);
    }

    /**
     * The hottest day on which the duty is expected to hold, judged as the verdict is: never at odds with the margin.
     *
     * @param ambientK air around the car [K]; infinite when it still holds at {@code triedToK}, minus infinity when it never does
     * @param decidingPoint id of the operating point that decides there
     * @param byRun whether the peak of the run meets the limit there rather than a steady state
     * @param triedToK hottest air that was tried [K]
     */
    public record HottestDay(double ambientK, String decidingPoint, boolean byRun, double triedToK) {}

    /** What the verdict rests on. */
    public record FindingLine(
            String code, StoredVerdict verdict, Amount figure, StoredMessage text, StoredMessage doThis) {

        /** The chance of being too hot, which every format stores under this name. */
        static final String CHANCE = "COOLANT_PROBABILITY";

        /** Whether it rests on the chance of being too hot rather than on a margin. */
        @JsonIgnore
        public boolean isChance() {
            return code.equals(CHANCE);
        }
    }

    /** What a duty's verdict comes from. */
    public enum JudgedBy {
        STEADY,
        RUN_AND_IDLE,
        BOTH
    }

    /**
     * The two margins that a verdict may rest on.
     *
     * @param judged what the duty says its verdict comes from
     * @param steadyPoint id of the point with the smallest steady margin among those that count; empty when none counts
     * @param steadyMarginK that margin [K]; infinite when none counts, minus infinity without a steady state
     * @param runMarginK coolant limit less the peak of the run [K]; NaN without a schedule
     */
    public record Judgement(JudgedBy judged, String steadyPoint, double steadyMarginK, double runMarginK) {

        /** Whether the run has a say. */
        public boolean countsRun() {
            return judged != JudgedBy.STEADY;
        }

        /** Whether any steady state has a say. */
        public boolean countsSteady() {
            return !steadyPoint.isEmpty();
        }
    }

    @JsonIgnore
    public boolean isRefused() {
        return verdict == StoredVerdict.NO_GO;
    }

    /** What the duty's author calls an operating point, or its id. */
    public String pointLabel(String pointId) {
        Stream<String> steady =
                points.stream().filter(p -> p.id().equals(pointId)).map(PointResult::label);
        Stream<String> driven = run.stream()
                .flatMap(r -> r.phases().stream())
                .filter(p -> p.summary().pointId().equals(pointId))
                .map(StoredRun.Phase::label);
        return Stream.concat(steady, driven).findFirst().orElse(pointId);
    }

    /** The what-if of a kind, if it was driven. */
    public Optional<WhatIf> whatIf(WhatIf.Kind kind) {
        return whatIfs.stream().filter(w -> w.kind() == kind).findFirst();
    }

    /** The operating point that decides. */
    public PointResult deciding() {
        return points.stream()
                .filter(p -> p.id().equals(decidingPoint))
                .findFirst()
                .orElseThrow();
    }

    /** The steady state at which fans and loads are furthest beyond the alternator, or closest to it. */
    public Optional<PointResult> hardestOnAlternator() {
        return points.stream()
                .filter(p -> p.steady().isPresent())
                .min((a, b) -> Double.compare(
                        a.steady().get().spareA(), b.steady().get().spareA()));
    }
}

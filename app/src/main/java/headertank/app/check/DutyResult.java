package headertank.app.check;

import headertank.calc.verdict.Verdict;
import java.util.List;
import java.util.Optional;

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
 * @param run the run over time, for a duty with a schedule
 */
public record DutyResult(
        String id,
        String label,
        Verdict verdict,
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
        Optional<Run> run) {

    public DutyResult {
        marginSpread = marginSpread == null ? Optional.empty() : marginSpread;
        run = run == null ? Optional.empty() : run;
        findings = List.copyOf(findings);
        points = List.copyOf(points);
    }

    /** 5 %, 50 % and 95 % of the samples; infinite where a sample had no answer. */
    public record Range(double low, double median, double high) {}

    /** What the verdict rests on. */
    public record FindingLine(String code, Verdict verdict, double value, String unit, String text, String doThis) {}

    /** A run over time, see {@link headertank.calc.transients.RunResult}. */
    public record Run(
            double peakCoolantK,
            double peakCoolantAtS,
            double peakOilK,
            double lowestBoilingMarginK,
            double secondsAboveLimit,
            double batteryAmpereHours,
            int fanStarts,
            double energyErrorShare,
            List<Moment> trace) {
        public Run {
            trace = List.copyOf(trace);
        }

        /** The highest that the gauge shows [K]. */
        public double peakGaugeK() {
            return trace.stream().mapToDouble(Moment::gaugeK).max().orElse(Double.NaN);
        }
    }

    /** One moment of a run. */
    public record Moment(
            double timeS,
            String point,
            double coolantK,
            double oilK,
            double gaugeK,
            double fanDuty,
            double fanCurrentA) {}

    public boolean isRefused() {
        return verdict == Verdict.NO_GO;
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

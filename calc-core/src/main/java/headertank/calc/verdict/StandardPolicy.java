package headertank.calc.verdict;

import headertank.calc.coolant.BoilingMargin;
import headertank.calc.quantity.Note;
import headertank.calc.result.Balance;
import headertank.calc.result.PointRating;
import headertank.calc.verdict.Finding.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The default thresholds. The bulk boiling margin of 10 K and 5 K is {@code common practice, no source}; the accepted
 * probabilities are a policy, not physics: a shop with another view moves the {@link Thresholds}, or installs its own
 * {@link VerdictPolicy}.
 */
public final class StandardPolicy implements VerdictPolicy {

    /** Bulk boiling margin for a go [K]. */
    public static final double GO_BOILING_K = BoilingMargin.GO_K;

    /** Bulk boiling margin below which it is a no-go [K]. */
    public static final double LEAST_BOILING_K = BoilingMargin.NO_GO_K;

    /** Current that a battery may give while idling for a go [A]. */
    public static final double GO_DEFICIT_A = Threshold.GO_DEFICIT_A.standard();

    private final Thresholds limits;

    /** Judges by the usual thresholds; found by {@link java.util.ServiceLoader}. */
    public StandardPolicy() {
        this(Thresholds.STANDARD);
    }

    /** Judges by a shop's own thresholds, which its version then names. */
    public StandardPolicy(Thresholds limits) {
        this.limits = limits;
    }

    private double limit(Threshold threshold) {
        return limits.value(threshold);
    }

    @Override
    public String id() {
        return "standard-policy";
    }

    @Override
    public String version() {
        return limits.moved().isEmpty() ? "1" : "1+" + limits.moved();
    }

    @Override
    public String source() {
        return "boiling margin: common practice, no source; probabilities: policy";
    }

    @Override
    public List<Double> turns() {
        return List.of(limit(Threshold.GO_PROBABILITY), limit(Threshold.CONDITIONS_PROBABILITY));
    }

    @Override
    public List<Finding> judge(DutyOutcome outcome) {
        List<Finding> findings = new ArrayList<>();
        coolant(outcome, findings);
        boiling(outcome, findings);
        oil(outcome, findings);
        electric(outcome, findings);
        pumpInlet(outcome, findings);
        outsideSources(outcome, findings);
        return findings;
    }

    private void coolant(DutyOutcome o, List<Finding> findings) {
        double margin = o.coolantMarginK();
        if (margin == Double.NEGATIVE_INFINITY) {
            String why = o.deciding().balance() instanceof Balance.None none ? none.explanation() : "no steady state";
            findings.add(new Finding(
                    Code.NO_STEADY_STATE,
                    Verdict.NO_GO,
                    margin,
                    "K",
                    why,
                    "Lower the heat or raise the cooling; see the changes that buy the most margin."));
            return;
        }
        String at = o.decidedByRun()
                ? "at the peak of the run"
                : "at \"" + o.deciding().point().label() + "\"";
        if (o.marginSpread().isEmpty()) {
            Verdict v = margin >= limit(Threshold.GO_MARGIN_K)
                    ? Verdict.GO
                    : margin >= 0 ? Verdict.GO_WITH_CONDITIONS : Verdict.NO_GO;
            findings.add(new Finding(
                    Code.COOLANT_MARGIN,
                    v,
                    margin,
                    "K",
                    text("Coolant margin %.1f K %s, uncertainty not yet computed.", margin, at),
                    ""));
            return;
        }
        double p = o.probabilityTooHot();
        Verdict v = p <= limit(Threshold.GO_PROBABILITY)
                ? Verdict.GO
                : p <= limit(Threshold.CONDITIONS_PROBABILITY) && margin >= 0
                        ? Verdict.GO_WITH_CONDITIONS
                        : Verdict.NO_GO;
        String doThis =
                switch (v) {
                    case GO -> "";
                    case GO_WITH_CONDITIONS ->
                        o.decidedByRun()
                                ? "Watch the gauge in each run, end the run at the limit and let the fans bring it"
                                        + " down before the next."
                                : "Watch the gauge, back off at the limit, and measure what is only guessed before the"
                                        + " next hard day.";
                    case NO_GO -> "Do not hand it over for this duty; see the changes that buy the most margin.";
                };
        findings.add(new Finding(
                Code.COOLANT_PROBABILITY,
                v,
                p,
                "-",
                text(
                        "Coolant margin %.1f K %s (5 to 95 %%: %s to %s K); it passes its limit with a probability of"
                                + " %.0f %%.",
                        margin,
                        at,
                        kelvins(o.marginSpread().get().low()),
                        kelvins(o.marginSpread().get().high()),
                        100 * p),
                doThis));
    }

    private void boiling(DutyOutcome o, List<Finding> findings) {
        double margin = o.boilingMarginK();
        if (Double.isInfinite(margin)) {
            return;
        }
        Verdict v = margin >= limit(Threshold.GO_BOILING_K)
                ? Verdict.GO
                : margin >= limit(Threshold.LEAST_BOILING_K) ? Verdict.GO_WITH_CONDITIONS : Verdict.NO_GO;
        findings.add(new Finding(
                Code.BOILING_MARGIN,
                v,
                margin,
                "K",
                text("Coolant stays %.1f K below boiling at the cap (common practice asks for 10 K).", margin),
                v == Verdict.GO
                        ? ""
                        : "Fit a stronger cap that radiator and hoses are rated for, or more glycol, or more"
                                + " cooling."));
    }

    private void oil(DutyOutcome o, List<Finding> findings) {
        double margin = o.oilMarginK();
        if (Double.isInfinite(margin) || Double.isNaN(margin)) {
            return;
        }
        Verdict v = margin >= 0
                ? Verdict.GO
                : margin >= -limit(Threshold.OIL_OVER_CAUTION_K) ? Verdict.GO_WITH_CONDITIONS : Verdict.NO_GO;
        findings.add(new Finding(
                Code.OIL_MARGIN,
                v,
                margin,
                "K",
                text("Oil stays %.1f K below its caution limit.", margin),
                v == Verdict.GO
                        ? ""
                        : "Fit or enlarge an oil cooler with air of its own, and watch the oil temperature."));
    }

    private void electric(DutyOutcome o, List<Finding> findings) {
        double worst = 0;
        PointRating at = null;
        for (PointRating p : o.points()) {
            if (p.balance() instanceof Balance.Steady s && s.electrics().deficitA() > worst) {
                worst = s.electrics().deficitA();
                at = p;
            }
        }
        if (at != null) {
            findings.add(new Finding(
                    Code.ALTERNATOR,
                    worst > limit(Threshold.GO_DEFICIT_A) ? Verdict.GO_WITH_CONDITIONS : Verdict.GO,
                    worst,
                    "A",
                    text(
                            "The battery gives %.0f A at \"%s\": the alternator does not carry fans and loads"
                                    + " there.",
                            worst, at.point().label()),
                    "Raise the idle speed, start the fans one after the other or on a ramp, or fit a larger"
                            + " alternator."));
        }
    }

    private static void pumpInlet(DutyOutcome o, List<Finding> findings) {
        double least = Double.POSITIVE_INFINITY;
        PointRating at = null;
        for (PointRating p : o.points()) {
            if (p.balance() instanceof Balance.Steady s && s.coolant().pumpInletMarginPa() < least) {
                least = s.coolant().pumpInletMarginPa();
                at = p;
            }
        }
        if (at != null && least < 0 && !o.decidedByRun()) {
            findings.add(new Finding(
                    Code.PUMP_INLET,
                    Verdict.GO_WITH_CONDITIONS,
                    least / 1000,
                    "kPa",
                    text(
                            "The pump lacks %.0f kPa at its inlet at \"%s\": it may cavitate and lose flow.",
                            -least / 1000, at.point().label()),
                    "Check cap, fill and hoses on the suction side; lower the radiator's resistance."));
        }
    }

    /** The sampled spread is already widened where a source ends; such a result is a go only if its low end holds. */
    private static void outsideSources(DutyOutcome o, List<Finding> findings) {
        Note widest = null;
        for (Note n : o.deciding().notes()) {
            if (n.widening() > 1 && (widest == null || n.widening() > widest.widening())) {
                widest = n;
            }
        }
        if (widest != null && o.marginSpread().isPresent()) {
            double low = o.marginSpread().get().low();
            findings.add(new Finding(
                    Code.OUTSIDE_SOURCE_RANGE,
                    low >= 0 ? Verdict.GO : Verdict.GO_WITH_CONDITIONS,
                    low,
                    "K",
                    text(
                            "A model was used outside its source's range, so the uncertainty was widened: %s The low"
                                    + " end of the margin is %s K.",
                            widest.why(), kelvins(low)),
                    low >= 0 ? "" : "Measure this part, or treat the margin as unknown."));
        }
    }

    private static String kelvins(double k) {
        return Double.isInfinite(k) ? (k < 0 ? "below any" : "above any") : text("%.1f", k);
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}

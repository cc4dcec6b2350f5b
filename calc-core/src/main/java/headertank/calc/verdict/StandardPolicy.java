package headertank.calc.verdict;

import headertank.calc.coolant.BoilingMargin;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.SiFigure;
import headertank.calc.result.Balance;
import headertank.calc.result.Distribution;
import headertank.calc.result.PointRating;
import headertank.calc.verdict.Finding.Code;
import java.util.ArrayList;
import java.util.List;

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

    /**
     * What coolant may warm by in an engine at work, its thermostat open, for a go, and beyond which it is a no-go [K]; common
     * practice, no source. Cars of the thirties showed 7 to 11 K at full throttle (published checks).
     */
    private static final double GO_RISE_K = 20;

    private static final double MOST_RISE_K = 30;
    private static final double OPEN_LIFT = 0.9;

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
        coolantRise(outcome, findings);
        outsideSources(outcome, findings);
        return findings;
    }

    private void coolant(DutyOutcome o, List<Finding> findings) {
        double margin = o.coolantMarginK();
        if (margin == Double.NEGATIVE_INFINITY) {
            Message why = o.deciding().balance() instanceof Balance.None none
                    ? none.explanation()
                    : VerdictText.NO_STEADY_STATE.with();
            findings.add(new Finding(
                    Code.NO_STEADY_STATE,
                    Verdict.NO_GO,
                    SiFigure.difference(margin),
                    why,
                    VerdictText.LOWER_HEAT.with()));
            return;
        }
        Message at =
                o.decidedByRun() ? VerdictText.AT_PEAK_OF_RUN.with() : VerdictText.AT_POINT.with(name(o, o.deciding()));
        SiFigure beside = SiFigure.difference(Math.abs(margin));
        if (o.marginSpread().isEmpty()) {
            Verdict v = margin >= limit(Threshold.GO_MARGIN_K)
                    ? Verdict.GO
                    : margin >= 0 ? Verdict.GO_WITH_CONDITIONS : Verdict.NO_GO;
            VerdictText text = margin >= 0 ? VerdictText.MARGIN_UNCERTAIN : VerdictText.BEYOND_LIMIT_UNCERTAIN;
            findings.add(new Finding(
                    Code.COOLANT_MARGIN, v, SiFigure.difference(margin), text.with(beside, at), Message.NONE));
            return;
        }
        double p = o.probabilityTooHot();
        Verdict v = margin < 0 || p > limit(Threshold.CONDITIONS_PROBABILITY)
                ? Verdict.NO_GO
                : p > limit(Threshold.GO_PROBABILITY) ? Verdict.GO_WITH_CONDITIONS : Verdict.GO;
        Message doThis =
                switch (v) {
                    case GO -> Message.NONE;
                    case GO_WITH_CONDITIONS ->
                        o.decidedByRun() ? VerdictText.END_RUN_AT_LIMIT.with() : VerdictText.BACK_OFF_AT_LIMIT.with();
                    case NO_GO -> VerdictText.DO_NOT_HAND_OVER.with();
                };
        SiFigure probability = new SiFigure(p, FigureKind.PROBABILITY);
        VerdictText text = margin >= 0 ? VerdictText.MARGIN : VerdictText.BEYOND_LIMIT;
        findings.add(new Finding(
                Code.COOLANT_PROBABILITY,
                v,
                probability,
                text.with(
                        beside,
                        at,
                        SiFigure.difference(o.marginSpread().get().low()),
                        SiFigure.difference(o.marginSpread().get().high()),
                        probability),
                doThis));
    }

    private static MessageArgument name(DutyOutcome o, PointRating at) {
        return new MessageArgument.PointName(
                o.duty().id(), at.point().id(), at.point().label());
    }

    private void boiling(DutyOutcome o, List<Finding> findings) {
        double margin = o.boilingMarginK();
        if (Double.isInfinite(margin)) {
            return;
        }
        Verdict v = margin >= limit(Threshold.GO_BOILING_K)
                ? Verdict.GO
                : margin >= limit(Threshold.LEAST_BOILING_K) ? Verdict.GO_WITH_CONDITIONS : Verdict.NO_GO;
        VerdictText text = margin >= 0 ? VerdictText.BELOW_BOILING : VerdictText.ABOVE_BOILING;
        findings.add(new Finding(
                Code.BOILING_MARGIN,
                v,
                SiFigure.difference(margin),
                text.with(SiFigure.difference(Math.abs(margin)), SiFigure.difference(GO_BOILING_K)),
                v == Verdict.GO ? Message.NONE : VerdictText.RAISE_BOILING_POINT.with()));
    }

    private void oil(DutyOutcome o, List<Finding> findings) {
        double margin = o.oilMarginK();
        if (Double.isInfinite(margin) || Double.isNaN(margin)) {
            return;
        }
        if (o.oilSamples().isPresent()) {
            findings.add(oil(margin, o.oilSamples().get()));
            return;
        }
        Verdict v = margin >= 0
                ? Verdict.GO
                : margin >= -limit(Threshold.OIL_OVER_CAUTION_K) ? Verdict.GO_WITH_CONDITIONS : Verdict.NO_GO;
        VerdictText text = margin >= 0 ? VerdictText.OIL_BELOW_LIMIT : VerdictText.OIL_ABOVE_LIMIT;
        findings.add(new Finding(
                Code.OIL_MARGIN,
                v,
                SiFigure.difference(margin),
                text.with(SiFigure.difference(Math.abs(margin))),
                v == Verdict.GO ? Message.NONE : VerdictText.COOL_OIL.with()));
    }

    /**
     * Oil is judged by the same samples and probabilities as coolant. It has two limits: a go keeps below the one from where a shop
     * is careful, a no-go is beyond the one where oil is damaged.
     */
    private Finding oil(double margin, Distribution sampled) {
        double over = limit(Threshold.OIL_OVER_CAUTION_K);
        double careful = sampled.probabilityBelow(0);
        double damaged = sampled.probabilityBelow(-over);
        Verdict v = careful <= limit(Threshold.GO_PROBABILITY)
                ? Verdict.GO
                : damaged <= limit(Threshold.CONDITIONS_PROBABILITY) && margin >= -over
                        ? Verdict.GO_WITH_CONDITIONS
                        : Verdict.NO_GO;
        VerdictText text = margin >= 0 ? VerdictText.OIL_MARGIN : VerdictText.OIL_BEYOND_LIMIT;
        return new Finding(
                Code.OIL_MARGIN,
                v,
                SiFigure.difference(margin),
                text.with(
                        SiFigure.difference(Math.abs(margin)),
                        SiFigure.difference(sampled.low()),
                        SiFigure.difference(sampled.high()),
                        new SiFigure(careful, FigureKind.PROBABILITY)),
                v == Verdict.GO ? Message.NONE : VerdictText.COOL_OIL.with());
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
            SiFigure given = SiFigure.current(worst);
            findings.add(new Finding(
                    Code.ALTERNATOR,
                    worst > limit(Threshold.GO_DEFICIT_A) ? Verdict.GO_WITH_CONDITIONS : Verdict.GO,
                    given,
                    VerdictText.BATTERY_PAYS.with(given, name(o, at)),
                    VerdictText.EASE_ALTERNATOR.with()));
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
                    new SiFigure(least, FigureKind.PRESSURE_GAUGE),
                    VerdictText.PUMP_LACKS_PRESSURE.with(new SiFigure(-least, FigureKind.PRESSURE_GAUGE), name(o, at)),
                    VerdictText.CHECK_PUMP_INLET.with()));
        }
    }

    /**
     * Coolant that is hardly pumped leaves the engine much hotter than it came: at the far cylinders the jacket is then hot while the
     * mean looks well. Looked at where the engine works and the thermostat stands open, for a throttled radiator has a large drop
     * and means no harm.
     */
    private static void coolantRise(DutyOutcome o, List<Finding> findings) {
        double most = 0;
        PointRating at = null;
        for (PointRating p : o.points()) {
            if (p.balance() instanceof Balance.Steady s
                    && !p.point().idles()
                    && s.coolant().lift() >= OPEN_LIFT
                    && s.engineOutK() - s.coolant().radiatorOutK() > most) {
                most = s.engineOutK() - s.coolant().radiatorOutK();
                at = p;
            }
        }
        if (at != null && most > GO_RISE_K) {
            SiFigure rise = SiFigure.difference(most);
            findings.add(new Finding(
                    Code.COOLANT_RISE,
                    most > MOST_RISE_K ? Verdict.NO_GO : Verdict.GO_WITH_CONDITIONS,
                    rise,
                    VerdictText.COOLANT_RISES_TOO_MUCH.with(rise, name(o, at)),
                    VerdictText.LOOK_FOR_COOLANT_FLOW.with()));
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
                    SiFigure.difference(low),
                    VerdictText.OUTSIDE_SOURCE.with(widest.why(), SiFigure.difference(low)),
                    low >= 0 ? Message.NONE : VerdictText.MEASURE_PART.with()));
        }
    }
}

package headertank.app.check.snapshot;

import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckInput.Value;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.CheckResult.AssumedValue;
import headertank.app.check.stored.CheckResult.Condition;
import headertank.app.check.stored.CheckResult.Consequence;
import headertank.app.check.stored.CheckResult.FlagLine;
import headertank.app.check.stored.CheckResult.FlowLine;
import headertank.app.check.stored.CheckResult.Gain;
import headertank.app.check.stored.CheckResult.ImprovementLine;
import headertank.app.check.stored.CheckResult.NoteLine;
import headertank.app.check.stored.CheckResult.PlugInLine;
import headertank.app.check.stored.CheckResult.SlowCoolantAnswer;
import headertank.app.check.stored.CheckResult.Weight;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.PointResult;
import headertank.app.check.stored.PointResult.WorkingLine;
import headertank.app.check.stored.PointResult.WorkingPart;
import headertank.app.check.stored.StoredMessage;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.evidence.Seen;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import headertank.calc.quantity.WorkingSection;
import headertank.calc.result.Balance;
import headertank.calc.result.Figures;
import headertank.calc.result.HottestDay;
import headertank.calc.result.Improvement;
import headertank.calc.result.PointRating;
import headertank.calc.result.SlowCoolant;
import headertank.calc.risk.Flag;
import headertank.calc.verdict.DutyOutcome;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.Finding;
import headertank.calc.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Turns a rating into what is stored of it. */
public final class Snapshot {

    /** Word for a value that nobody stated. */
    public static final String ASSUMED = "ASSUMED";

    private Snapshot() {}

    /** @return what went in, of a car of which nothing was seen */
    public static CheckInput input(Rating rating, long revisionId, int revisionNumber) {
        return input(rating, revisionId, revisionNumber, Optional.empty());
    }

    /**
     * @param seen what was seen of the car and what that taught
     * @return what went in
     */
    public static CheckInput input(Rating rating, long revisionId, int revisionNumber, Optional<Seen> seen) {
        Resolved r = rating.resolved();
        SortedMap<String, Value> fields = new TreeMap<>();
        for (BuildField f : BuildField.values()) {
            String token = r.token(f);
            if (f.isChoice() ? token.isEmpty() : !r.has(f)) {
                continue;
            }
            Optional<Entry> entry = r.build().entry(f);
            double stated = entry.orElse(null) instanceof Stated s ? s.si() : Double.NaN;
            fields.put(
                    f.key(),
                    new Value(
                            r.value(f),
                            stated,
                            token,
                            entry.map(e -> e.from().name()).orElse(ASSUMED),
                            spread(r.spread(f))));
        }
        return new CheckInput(
                revisionId,
                revisionNumber,
                rating.version(),
                rating.seed(),
                rating.samples(),
                r.build().carClass().name(),
                fields,
                rating.duties().stream().map(d -> DutySnapshot.of(d.duty())).toList(),
                seen.map(s -> learned(s, r.learned())));
    }

    private static CheckInput.LearnedFrom learned(Seen seen, Learned still) {
        return new CheckInput.LearnedFrom(
                seen.lesson().id(),
                seen.lesson().sha256(),
                seen.usedText(),
                seen.pieces().stream()
                        .map(p -> new CheckInput.LearnedPiece(p.id(), p.kind().name(), p.sha256()))
                        .toList(),
                still.known().name(),
                still.factors().stream()
                        .map(f -> new CheckInput.LearnedFactor(f.key(), f.moved(), f.left()))
                        .toList());
    }

    private static CheckResult.HowKnown known(Optional<Seen> seen, Learned still) {
        SortedMap<String, Integer> evidence = new TreeMap<>();
        seen.filter(s -> !still.isNothing())
                .map(Seen::pieces)
                .orElse(List.of())
                .forEach(p -> evidence.merge(p.kind().name(), 1, Integer::sum));
        return new CheckResult.HowKnown(still.known().name(), evidence, still.strain(), still.isBeyondBelief());
    }

    /** @return what came out, of a car of which nothing was seen */
    public static CheckResult result(Rating rating, Rater rater) {
        return result(rating, rater, Optional.empty());
    }

    /**
     * @param seen what was seen of the car and what that taught
     * @return what came out
     */
    public static CheckResult result(Rating rating, Rater rater, Optional<Seen> seen) {
        Resolved r = rating.resolved();
        return new CheckResult(
                rating.version(),
                rating.seed(),
                rating.samples(),
                r.value(BuildField.COOLANT_LIMIT),
                r.value(BuildField.OIL_LIMIT),
                r.value(BuildField.AMBIENT),
                r.token(BuildField.GAUGE_SENSOR),
                rating.duties().stream().map(d -> duty(d, rating, rater)).toList(),
                rating.flags().stream().map(Snapshot::flag).toList(),
                rating.improvements().stream().map(Snapshot::improvement).toList(),
                r.assumptions().stream()
                        .map(a -> new AssumedValue(
                                a.field().key(),
                                a.value(),
                                a.token(),
                                MessageSnapshot.of(a.why().with())))
                        .toList(),
                rating.notes().stream()
                        .map(n -> new NoteLine(
                                n.field(),
                                n.value(),
                                n.covered().min(),
                                n.covered().max(),
                                n.action().name(),
                                n.widening(),
                                MessageSnapshot.of(n.why())))
                        .toList(),
                rating.plugIns().stream()
                        .map(p -> new PlugInLine(p.kind(), p.id(), p.version(), p.source(), p.problem()))
                        .toList(),
                conditions(rating),
                Optional.of(slowCoolant(rating.duties().get(0).outcome(), r, rater)),
                Optional.of(rater.turns()),
                Optional.of(known(seen, r.learned())));
    }

    private static SlowCoolantAnswer slowCoolant(DutyOutcome o, Resolved r, Rater rater) {
        SlowCoolant answer = rater.slowCoolant(r.build(), o.duty(), o.decidingPointId());
        return new SlowCoolantAnswer(
                o.duty().id(),
                answer.point().id(),
                answer.flowNowM3PerS(),
                answer.againstFlow().stream()
                        .map(f -> new FlowLine(
                                f.flowM3PerS(),
                                f.heatW(),
                                f.coolantDropK(),
                                f.pressureDropPa(),
                                f.tubeReynolds(),
                                f.tubeRegime().name()))
                        .toList(),
                answer.inWords().stream().map(MessageSnapshot::of).toList());
    }

    private static List<Condition> conditions(Rating rating) {
        List<Condition> conditions = new ArrayList<>();
        for (DutyVerdict d : rating.duties()) {
            for (Finding f : d.findings()) {
                if (f.verdict() == Verdict.GO_WITH_CONDITIONS && f.code() != Finding.Code.RISK_FLAG) {
                    String key = d.duty().id() + "." + f.code().name() + "." + conditions.size();
                    conditions.add(new Condition(
                            key, d.duty().id(), Condition.subject(f.code().name()), MessageSnapshot.of(f.doThis())));
                }
            }
        }
        for (Flag f : rating.flags()) {
            if (f.weight() != Flag.Weight.REMARK) {
                conditions.add(new Condition(
                        "flag." + f.ruleId(), "", MessageSnapshot.of(f.title()), MessageSnapshot.of(f.advice())));
            }
        }
        return conditions;
    }

    private static DutyResult duty(DutyVerdict verdict, Rating rating, Rater rater) {
        Resolved r = rating.resolved();
        DutyOutcome o = verdict.outcome();
        return new DutyResult(
                o.duty().id(),
                o.duty().label(),
                StoredVerdict.valueOf(verdict.verdict().name()),
                o.decidingPointId(),
                o.decidedByRun(),
                o.coolantMarginK(),
                o.marginSpread()
                        .map(m -> new DutyResult.Range(m.low(), m.median(), m.high(), Optional.of(m.samples()))),
                o.probabilityTooHot(),
                o.probabilityBoils(),
                o.boilingMarginK(),
                o.oilMarginK(),
                verdict.findings().stream()
                        .map(f -> new DutyResult.FindingLine(
                                f.code().name(),
                                StoredVerdict.valueOf(f.verdict().name()),
                                MessageSnapshot.of(f.figure()),
                                MessageSnapshot.of(f.text()),
                                MessageSnapshot.of(f.doThis())))
                        .toList(),
                o.points().stream()
                        .map(p -> point(
                                p,
                                r,
                                rater.working(r.build(), o.duty(), p.point().id())))
                        .toList(),
                Optional.of(judgement(o)),
                rater.traced(rating, o).map(run -> RunSnapshot.of(o.duty(), run)),
                rater.whatIfs(rating, o).stream().map(WhatIfSnapshot::of).toList(),
                Optional.of(rater.worthMeasuring(r.build(), o.duty()).stream()
                        .map(w -> new DutyResult.Unknown(w.field().key(), w.guessed(), w.marginK()))
                        .toList()),
                Optional.of(hottestDay(rater.hottestDay(rating, o))));
    }

    private static DutyResult.HottestDay hottestDay(HottestDay day) {
        return new DutyResult.HottestDay(day.ambientK(), day.decidingPointId(), day.byRun(), HottestDay.HOTTEST_K);
    }

    private static DutyResult.Judgement judgement(DutyOutcome o) {
        DutyOutcome.Sides sides = o.sides();
        return new DutyResult.Judgement(
                DutyResult.JudgedBy.valueOf(o.duty().judged().name()),
                sides.steadyPointId(),
                sides.steadyMarginK(),
                sides.runMarginK());
    }

    private static PointResult point(PointRating p, Resolved r, List<WorkingSection> working) {
        String id = p.point().id();
        String label = p.point().label();
        if (p.balance() instanceof Balance.Steady s) {
            return new PointResult(
                    id, label, p.figures().map(f -> steady(s, f, r)), "", StoredMessage.NONE, working(working));
        }
        Balance.None none = (Balance.None) p.balance();
        return new PointResult(
                id, label, Optional.empty(), none.reason().name(), MessageSnapshot.of(none.explanation()), List.of());
    }

    private static PointResult.Steady steady(Balance.Steady s, Figures f, Resolved r) {
        SensorPlacement gauge = r.option(BuildField.GAUGE_SENSOR, SensorPlacement.class);
        double shown = Rater.sensorShowsK(gauge, s);
        return new PointResult.Steady(
                s.ambientK(),
                s.engineOutK(),
                s.coolant().radiatorOutK(),
                s.coolant().radiatorM3PerS(),
                shown,
                s.oil().oilK(),
                f.coolantMarginK(),
                f.oilMarginK(),
                f.boilingMarginK(),
                f.limitingAmbientK(),
                f.limitingAmbientLinearK(),
                f.boilingAmbientK(),
                f.boilingAmbientLinearK(),
                s.electrics().fanA(),
                s.electrics().loadA(),
                s.electrics().availableA(),
                s.residuals().heatShare(),
                s.residuals().evaluations());
    }

    private static FlagLine flag(Flag f) {
        return new FlagLine(
                f.ruleId(),
                f.ruleVersion(),
                MessageSnapshot.of(f.title()),
                Weight.valueOf(f.weight().name()),
                MessageSnapshot.of(f.reason()),
                f.consequences().stream()
                        .map(c -> new Consequence(
                                MessageSnapshot.of(c.what()), c.dutyId(), MessageSnapshot.of(c.figure())))
                        .toList(),
                MessageSnapshot.of(f.advice()),
                MessageSnapshot.of(f.tradeSays()),
                MessageSnapshot.of(f.caution()),
                f.source());
    }

    private static ImprovementLine improvement(Improvement i) {
        return new ImprovementLine(
                i.id(),
                MessageSnapshot.of(i.label()),
                i.gains().stream().map(g -> new Gain(g.dutyId(), g.gainK())).toList());
    }

    private static List<WorkingPart> working(List<WorkingSection> sections) {
        return sections.stream()
                .map(s -> new WorkingPart(
                        MessageSnapshot.of(s.title().with()),
                        s.lines().stream()
                                .map(l -> new WorkingLine(
                                        MessageSnapshot.of(l.quantity().with()),
                                        l.symbol(),
                                        l.unit(),
                                        l.value(),
                                        l.source()))
                                .toList()))
                .toList();
    }

    private static CheckInput.Spread spread(Spread s) {
        return new CheckInput.Spread(s.sigma(), s.relative(), s.meanFactor());
    }
}

package headertank.app.check.snapshot;

import headertank.app.check.stored.CheckFormat;
import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckInput.Value;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.CheckResult.AssumedValue;
import headertank.app.check.stored.CheckResult.Condition;
import headertank.app.check.stored.CheckResult.Consequence;
import headertank.app.check.stored.CheckResult.FlagLine;
import headertank.app.check.stored.CheckResult.NoteLine;
import headertank.app.check.stored.CheckResult.PlugInLine;
import headertank.app.check.stored.CheckResult.SlowCoolantAnswer;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.PointResult;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Stated;
import headertank.calc.quantity.WorkingSection;
import headertank.calc.rating.SlowCoolant;
import headertank.calc.result.Balance;
import headertank.calc.result.Figures;
import headertank.calc.result.PointRating;
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

    /** @return what went in */
    public static CheckInput input(Rating rating, long revisionId, int revisionNumber) {
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
                            r.spread(f)));
        }
        List<Duty> duties = rating.duties().stream().map(DutyVerdict::duty).toList();
        return new CheckInput(
                revisionId,
                revisionNumber,
                rating.version(),
                rating.seed(),
                rating.samples(),
                r.build().carClass().name(),
                fields,
                CheckFormat.mapper().valueToTree(duties));
    }

    /** @return what came out */
    public static CheckResult result(Rating rating, Rater rater) {
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
                rating.improvements(),
                r.assumptions().stream()
                        .map(a -> new AssumedValue(a.field().key(), a.value(), a.token(), a.why()))
                        .toList(),
                rating.notes().stream()
                        .map(n -> new NoteLine(
                                n.field(),
                                n.value(),
                                n.covered().min(),
                                n.covered().max(),
                                n.action().name(),
                                n.widening(),
                                n.why()))
                        .toList(),
                rating.plugIns().stream()
                        .map(p -> new PlugInLine(p.kind(), p.id(), p.version(), p.source(), p.problem()))
                        .toList(),
                conditions(rating),
                Optional.of(slowCoolant(rating.duties().get(0).outcome(), r, rater)));
    }

    private static SlowCoolantAnswer slowCoolant(DutyOutcome o, Resolved r, Rater rater) {
        SlowCoolant answer = rater.slowCoolant(r.build(), o.duty(), o.decidingPointId());
        return new SlowCoolantAnswer(
                o.duty().label(),
                answer.point().label(),
                answer.flowNowM3PerS(),
                answer.againstFlow(),
                answer.inWords());
    }

    private static List<Condition> conditions(Rating rating) {
        List<Condition> conditions = new ArrayList<>();
        for (DutyVerdict d : rating.duties()) {
            for (Finding f : d.findings()) {
                if (f.verdict() == Verdict.GO_WITH_CONDITIONS && f.code() != Finding.Code.RISK_FLAG) {
                    String key = d.duty().id() + "." + f.code().name() + "." + conditions.size();
                    conditions.add(new Condition(key, d.duty().id(), f.code().name(), f.doThis()));
                }
            }
        }
        for (Flag f : rating.flags()) {
            if (f.weight() != Flag.Weight.REMARK) {
                conditions.add(new Condition("flag." + f.ruleId(), "", f.title(), f.advice()));
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
                verdict.verdict(),
                o.decidingPointId(),
                o.decidedByRun(),
                o.coolantMarginK(),
                o.marginSpread().map(m -> new DutyResult.Range(m.low(), m.median(), m.high())),
                o.probabilityTooHot(),
                o.probabilityBoils(),
                o.boilingMarginK(),
                o.oilMarginK(),
                verdict.findings().stream()
                        .map(f -> new DutyResult.FindingLine(
                                f.code().name(), f.verdict(), f.value(), f.unit(), f.text(), f.doThis()))
                        .toList(),
                o.points().stream()
                        .map(p -> point(
                                p,
                                r,
                                rater.working(r.build(), o.duty(), p.point().id())))
                        .toList(),
                Optional.of(judgement(o)),
                rater.traced(rating, o).map(run -> RunSnapshot.of(o.duty(), run)),
                rater.whatIfs(rating, o).stream().map(WhatIfs::of).toList());
    }

    private static DutyResult.Judgement judgement(DutyOutcome o) {
        DutyOutcome.Sides sides = o.sides();
        return new DutyResult.Judgement(
                o.duty().judged(), sides.steadyPointId(), sides.steadyMarginK(), sides.runMarginK());
    }

    private static PointResult point(PointRating p, Resolved r, List<WorkingSection> working) {
        String id = p.point().id();
        String label = p.point().label();
        if (p.balance() instanceof Balance.Steady s) {
            return new PointResult(id, label, p.figures().map(f -> steady(s, f, r)), "", "", working);
        }
        Balance.None none = (Balance.None) p.balance();
        return new PointResult(id, label, Optional.empty(), none.reason().name(), none.explanation(), List.of());
    }

    private static PointResult.Steady steady(Balance.Steady s, Figures f, Resolved r) {
        SensorPlacement gauge = r.option(BuildField.GAUGE_SENSOR, SensorPlacement.class);
        double shown = Rater.sensorShowsK(gauge, s);
        return new PointResult.Steady(
                s.ambientK(),
                s.engineOutK(),
                s.radiatorOutK(),
                s.radiatorM3PerS(),
                shown,
                s.oilK(),
                f.coolantMarginK(),
                f.oilMarginK(),
                f.boilingMarginK(),
                f.limitingAmbientK(),
                f.limitingAmbientLinearK(),
                f.boilingAmbientK(),
                f.boilingAmbientLinearK(),
                s.fanCurrentA(),
                s.loadA(),
                s.availableA(),
                s.residualShare(),
                s.evaluations());
    }

    private static FlagLine flag(Flag f) {
        return new FlagLine(
                f.ruleId(),
                f.ruleVersion(),
                f.title(),
                f.weight(),
                f.reason(),
                f.consequences().stream()
                        .map(c -> new Consequence(c.what(), c.dutyId(), c.value(), c.unit()))
                        .toList(),
                f.advice(),
                f.tradeSays(),
                f.caution(),
                f.source());
    }
}

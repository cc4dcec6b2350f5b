package headertank.app.check.page;

import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import headertank.app.carspec.history.Differences;
import headertank.app.carspec.history.RevisionComparison;
import headertank.app.check.Checks;
import headertank.app.check.chart.MarginBar;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.page.FirstScreen.Action;
import headertank.app.check.page.FirstScreen.Kind;
import headertank.app.check.page.FirstScreen.OtherDuty;
import headertank.app.check.page.FirstScreen.Since;
import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.PointResult;
import headertank.app.check.stored.StoredCheck;
import headertank.app.check.stored.StoredRun;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.evidence.Lessons;
import headertank.app.language.Dates;
import headertank.app.problem.NotFoundException;
import headertank.calc.carspec.BuildField;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Puts the first screen of a check into words: go or not, why, and what first. */
@Component
class FirstScreens {

    private static final int MOST_ACTIONS = 3;
    private static final int MOST_UNKNOWNS = 2;
    private static final int CHECKS_LOOKED_AT = 50;

    /** Less than this is no difference worth a word [K]. */
    private static final double NOTHING_K = 0.05;

    private final Checks checks;
    private final Revisions revisions;
    private final Differences differences;
    private final RevisionComparison comparison;
    private final ShopFigures figures;
    private final Dates dates;
    private final Lessons lessons;

    FirstScreens(
            Checks checks,
            Revisions revisions,
            Differences differences,
            RevisionComparison comparison,
            ShopFigures figures,
            Dates dates,
            Lessons lessons) {
        this.checks = checks;
        this.revisions = revisions;
        this.differences = differences;
        this.comparison = comparison;
        this.figures = figures;
        this.dates = dates;
        this.lessons = lessons;
    }

    /** The duty that a page of a check shows whole: the one asked for, else the worst. */
    static DutyResult shown(StoredCheck check, String dutyId) {
        return dutyId.isEmpty()
                ? check.result().worstFirst().get(0)
                : check.result().duty(dutyId).orElseThrow(() -> new NotFoundException("duty", dutyId));
    }

    FirstScreen of(StoredCheck check, DutyResult duty) {
        FigureText shown = figures.current();
        CheckResult result = check.result();
        Optional<Since> since = since(check, duty, shown);
        return new FirstScreen(
                duty,
                chance(duty, result, shown),
                because(duty, result, shown),
                peak(duty, shown),
                MarginBar.of(duty, shown),
                result.worstFirst().stream()
                        .filter(d -> !d.id().equals(duty.id()))
                        .map(d -> new OtherDuty(
                                d.id(), shown.shortDuty(d), d.verdict(), shown.margin(d.coolantMarginK())))
                        .toList(),
                Conditions.of(result, shown),
                first(duty, result, shown),
                since,
                unknowns(duty, shown).limit(MOST_UNKNOWNS).toList());
    }

    private static String chance(DutyResult duty, CheckResult result, FigureText shown) {
        String name = shown.shortDuty(duty);
        String day = shown.setTemperature(result.designAmbientK());
        String limit = shown.setTemperature(result.coolantLimitK());
        if (!Double.isFinite(duty.coolantMarginK())) {
            return shown.words("check.first.no-balance", name, day);
        }
        String chance = shown.chance(duty.probabilityTooHot(), duty.samples(result.samples()));
        if (Double.isNaN(duty.probabilityTooHot())) {
            return shown.words("check.first.no-chance", name, day, limit);
        }
        List<Double> turns = result.turns().orElse(List.of());
        if (turns.isEmpty()) {
            return shown.words("check.first.chance.only", name, day, chance, limit);
        }
        boolean with = turns.size() > 1
                && duty.verdict() == StoredVerdict.GO_WITH_CONDITIONS
                && duty.probabilityTooHot() > turns.get(0);
        return with
                ? shown.words(
                        "check.first.chance.conditions",
                        name,
                        day,
                        chance,
                        limit,
                        shown.share(turns.get(0)),
                        shown.share(turns.get(1)))
                : shown.words("check.first.chance", name, day, chance, limit, shown.share(turns.get(0)));
    }

    /** The first finding that allows no better verdict, unless the chance itself says so. */
    private String because(DutyResult duty, CheckResult result, FigureText shown) {
        if (!Double.isFinite(duty.coolantMarginK())) {
            return "";
        }
        List<DutyResult.FindingLine> worst = duty.findings().stream()
                .filter(f -> f.verdict() == duty.verdict() && duty.verdict() != StoredVerdict.GO)
                .toList();
        return worst.stream().anyMatch(DutyResult.FindingLine::isChance)
                ? ""
                : worst.stream()
                        .findFirst()
                        .map(f -> figures.finding(shown, duty, f, duty.samples(result.samples())))
                        .orElse("");
    }

    private static String peak(DutyResult duty, FigureText shown) {
        PointResult deciding = duty.deciding();
        if (!Double.isFinite(duty.coolantMarginK())) {
            return shown.said(deciding.explanation());
        }
        String point = shown.point(duty, duty.decidingPoint());
        Optional<StoredRun> run = duty.run().filter(r -> duty.decidedByRun());
        String hot = run.map(r -> shown.words(
                        "check.first.peak",
                        shown.temperature(r.peakCoolantK()),
                        point,
                        shown.duration(r.peakCoolantAtS())))
                .orElseGet(() -> shown.words(
                        "check.first.settles",
                        deciding.steady()
                                .map(s -> shown.temperature(s.engineOutK()))
                                .orElse(shown.words("check.none")),
                        point));
        boolean over = duty.coolantMarginK() < 0;
        String left = shown.words(
                over ? "check.first.over" : "check.first.left", shown.span(Math.abs(duty.coolantMarginK())));
        return duty.marginSpread()
                .map(r -> shown.words(
                        "check.first.range", hot, left, shown.difference(r.low()), shown.difference(r.high())))
                .orElseGet(() -> shown.words("check.first.no-range", hot, left));
    }

    /** The two changes that buy most and what is most unsure; where one of them is missing, more of the others. */
    private List<Action> first(DutyResult duty, CheckResult result, FigureText shown) {
        List<Action> changes = result.improvements().stream()
                .filter(i -> i.gainK(duty.id()) > NOTHING_K)
                .sorted((a, b) -> Double.compare(b.gainK(duty.id()), a.gainK(duty.id())))
                .map(i -> new Action(
                        Kind.CHANGE, shown.said(i.label()), shown.difference(i.gainK(duty.id())), i.id(), "", ""))
                .toList();
        List<Action> measurements = unknowns(duty, shown).toList();
        int measured = Math.min(measurements.size(), Math.max(1, MOST_ACTIONS - changes.size()));
        List<Action> first = new ArrayList<>(changes.subList(0, Math.min(changes.size(), MOST_ACTIONS - measured)));
        first.addAll(measurements.subList(0, measured));
        return List.copyOf(first);
    }

    /** What can be measured on the car; the day that it is to hold on is what the whole screen is about. */
    private Stream<Action> unknowns(DutyResult duty, FigureText shown) {
        return duty.unknowns().orElse(List.of()).stream()
                .filter(u -> !u.field().equals(BuildField.AMBIENT.key()))
                .map(u -> new Action(
                        Kind.MEASURE,
                        shown.words("check.first.measure", figures.label(u.field())),
                        "\u00b1\u00a0" + shown.span(u.marginK()),
                        "",
                        u.field(),
                        BuildField.ofKey(u.field()).map(BuildField::name).orElse("")));
    }

    private Optional<Since> since(StoredCheck check, DutyResult duty, FigureText shown) {
        return base(check).map(base -> {
            String signed = dates.day(base.signOff().orElseThrow().signedAt());
            String said = checks.byId(base.id())
                    .result()
                    .duty(duty.id())
                    .filter(d -> Double.isFinite(d.coolantMarginK()) && Double.isFinite(duty.coolantMarginK()))
                    .map(d -> moved(base, d, duty, signed, shown))
                    .orElseGet(() -> shown.words("check.first.since", base.revisionNumber(), signed));
            List<String> changes = differences
                    .between(
                            revisions.byId(base.revisionId()).spec(),
                            revisions.byId(check.line().revisionId()).spec())
                    .stream()
                    .map(Differences.Line::label)
                    .toList();
            return new Since(base, said, changes);
        });
    }

    /** What each change since then has cost or won of a duty's margin, the costliest first; it rates many states of the car. */
    List<Cost> costs(StoredCheck check, DutyResult duty) {
        FigureText shown = figures.current();
        return base(check).stream()
                .flatMap(base -> comparison
                        .between(
                                only(revisions.byId(base.revisionId()).spec(), duty),
                                only(revisions.byId(check.line().revisionId()).spec(), duty),
                                lessons.rater(check.line().carId()))
                        .stream())
                .flatMap(d -> d.parts().stream())
                .sorted((a, b) -> Double.compare(Math.abs(b.shareK()), Math.abs(a.shareK())))
                .limit(MOST_ACTIONS)
                .map(p -> new Cost(p.label(), detail(p.lines(), shown), shown.difference(p.shareK())))
                .toList();
    }

    /** What became of the only field, else which fields changed. */
    private static String detail(List<Differences.Line> lines, FigureText shown) {
        if (lines.size() != 1) {
            return lines.stream().map(Differences.Line::label).collect(Collectors.joining(", "));
        }
        Differences.Line only = lines.get(0);
        return value(only.before(), only.beforeStandIn(), shown) + " \u2192 "
                + value(only.after(), only.afterStandIn(), shown);
    }

    /** A value that nobody stated, with what stood in for it. */
    private static String value(String stated, String standIn, FigureText shown) {
        return !stated.isEmpty()
                ? stated
                : standIn.isEmpty() ? shown.words("spec.unknown") : shown.words("spec.unknown.stand-in", standIn);
    }

    private static Spec only(Spec spec, DutyResult duty) {
        return new Spec(spec.build(), List.of(duty.id()));
    }

    /**
     * What changed of a part, and its degrees.
     *
     * @param detail what became of it
     */
    record Cost(String what, String detail, String degrees) {}

    private static String moved(CheckLine base, DutyResult before, DutyResult now, String signed, FigureText shown) {
        double moved = tenths(now.coolantMarginK()) - tenths(before.coolantMarginK());
        String verdict = shown.words("verdict." + before.verdict().name());
        String key = Math.abs(moved) < NOTHING_K ? "same" : moved < 0 ? "lost" : "won";
        return shown.words(
                "check.first.since." + key,
                base.revisionNumber(),
                verdict,
                shown.difference(before.coolantMarginK()),
                signed,
                shown.span(Math.abs(moved)));
    }

    /** As it is shown, so that what has moved fits the figures beside it. */
    private static double tenths(double kelvin) {
        return Math.round(10 * kelvin) / 10.0;
    }

    /** The check of an earlier revision that was signed last to leave. */
    Optional<CheckLine> base(StoredCheck check) {
        return checks.ofCar(check.line().carId(), CHECKS_LOOKED_AT).stream()
                .filter(c -> c.revisionNumber() < check.line().revisionNumber())
                .filter(c -> c.signOff()
                        .filter(s -> s.decision() != Decision.HOLD_BACK)
                        .isPresent())
                .findFirst();
    }
}

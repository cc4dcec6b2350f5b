package headertank.app.incident.cause;

import headertank.app.carspec.Revisions;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.evidence.Lessons;
import headertank.app.field.FieldText;
import headertank.app.incident.Incident;
import headertank.app.incident.ReportedDuty;
import headertank.app.incident.cause.CauseView.AnswerLine;
import headertank.app.incident.cause.CauseView.AskedLine;
import headertank.app.incident.cause.CauseView.CauseLine;
import headertank.app.incident.cause.CauseView.Option;
import headertank.app.incident.cause.CauseView.OutcomeLine;
import headertank.app.incident.cause.CauseView.TestLine;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.cause.Inquiry;
import headertank.calc.cause.Observation;
import headertank.calc.cause.Ranking;
import headertank.calc.cause.Sighting;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Ranks the causes of a report by what was seen. */
@Component("hotCauses")
class HotCauses {

    private static final int ANSWERS = 3;
    private static final int TESTS = 4;
    private static final int CLUES = 4;

    /** A clue weaker than this, either way, is not shown. */
    private static final double WORTH_SAYING = 1.2;

    private final IncidentAnswers answers;
    private final ReportedDuty reportedDuty;
    private final Revisions revisions;
    private final Lessons lessons;
    private final ShopFigures figures;
    private final FieldText words;

    HotCauses(
            IncidentAnswers answers,
            ReportedDuty reportedDuty,
            Revisions revisions,
            Lessons lessons,
            ShopFigures figures,
            FieldText words) {
        this.answers = answers;
        this.reportedDuty = reportedDuty;
        this.revisions = revisions;
        this.lessons = lessons;
        this.figures = figures;
        this.words = words;
    }

    /** What a report leads to; the same as long as nothing more is said of it. */
    public CauseView of(Incident incident) {
        FigureText shown = figures.current();
        List<IncidentAnswer> given = answers.all(incident.id());
        Map<String, IncidentAnswer> now = IncidentAnswers.now(given);
        Duty duty = reportedDuty.of(incident);
        Build build = revisions.byId(incident.revisionId()).spec().build();
        Rater rater = lessons.rater(incident.carId());
        Ranking ranking = rater.causes(build, sighting(incident, duty, rater, build, now));
        Map<String, CauseLine> lines = new LinkedHashMap<>();
        ranking.causes().forEach(c -> lines.put(c.id(), line(c, shown)));
        List<AnswerLine> first = ranking.answers().stream()
                .limit(ANSWERS)
                .map(a -> new AnswerLine(a.ids().stream().map(lines::get).toList(), shown.share(a.posterior())))
                .toList();
        first.forEach(a -> a.causes().forEach(c -> lines.remove(c.id())));
        return new CauseView(
                first,
                List.copyOf(lines.values()),
                ranking.settled(),
                ranking.next().stream().limit(TESTS).map(t -> line(t, shown)).toList(),
                asked(duty, now, shown),
                given.stream().map(a -> said(duty, a, shown)).toList());
    }

    private static Sighting sighting(
            Incident incident, Duty duty, Rater rater, Build build, Map<String, IncidentAnswer> now) {
        SensorPlacement gauge = rater.resolve(build).option(BuildField.GAUGE_SENSOR, SensorPlacement.class);
        List<OperatingPoint> doings = IncidentAnswers.doings(duty);
        String point = Optional.ofNullable(now.get(IncidentAnswer.DOING))
                .map(IncidentAnswer::answer)
                .filter(id -> doings.stream().anyMatch(p -> p.id().equals(id)))
                .orElseGet(() -> usual(doings).id());
        Set<Observation> observed = now.values().stream()
                .filter(a -> !a.question().equals(IncidentAnswer.DOING))
                .map(a -> Observation.valueOf(a.answer()))
                .collect(Collectors.toSet());
        return new Sighting(
                duty,
                point,
                within(incident.ambientK(), BuildField.AMBIENT.allowed()),
                within(Optional.of(incident.readingK()), Sighting.SHOWN_K),
                incident.place() == gauge ? Optional.empty() : Optional.of(incident.place()),
                observed);
    }

    /** Where a car is taken to have run hot while nobody says: where it stands, else at the duty's first point. */
    private static OperatingPoint usual(List<OperatingPoint> doings) {
        return doings.stream().filter(OperatingPoint::idles).findFirst().orElse(doings.get(0));
    }

    /** Nothing where it cannot be right: what was seen counts without it. */
    private static OptionalDouble within(Optional<Double> k, Range allowed) {
        return k.filter(allowed::contains).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    private static CauseLine line(Ranking.Ranked c, FigureText shown) {
        return new CauseLine(
                c.id(),
                shown.said(c.name()),
                shown.share(c.posterior()),
                shown.share(c.prior()),
                c.amount().map(shown::said),
                c.clues().stream()
                        .filter(clue -> clue.timesLikelier() > WORTH_SAYING)
                        .limit(CLUES)
                        .map(clue -> shown.words("incident.clue.for", shown.said(clue.what()), clue.timesLikelier()))
                        .toList(),
                c.clues().stream()
                        .filter(clue -> clue.timesLikelier() < 1 / WORTH_SAYING)
                        .limit(CLUES)
                        .map(clue ->
                                shown.words("incident.clue.against", shown.said(clue.what()), 1 / clue.timesLikelier()))
                        .toList());
    }

    private static TestLine line(Ranking.NextTest t, FigureText shown) {
        String key = "incident.test." + t.test().name();
        return new TestLine(
                t.test().name(),
                shown.words(
                        "incident.test.name",
                        shown.said(t.test().with()),
                        t.test().minutes()),
                shown.words(key + ".how"),
                shown.words(key + ".tools"),
                shown.words("incident.test.caution." + TestHazard.of(t.test()).name()),
                t.outcomes().stream()
                        .map(o -> new OutcomeLine(
                                o.outcome().name(),
                                shown.said(o.outcome().with()),
                                shown.words(
                                        "incident.test.means",
                                        shown.share(o.chance()),
                                        shown.said(o.first()),
                                        shown.share(o.posterior()))))
                        .toList());
    }

    private List<AskedLine> asked(Duty duty, Map<String, IncidentAnswer> now, FigureText shown) {
        List<AskedLine> asked = new ArrayList<>();
        asked.add(asked(
                IncidentAnswer.DOING,
                shown.words("incident.asked.doing"),
                IncidentAnswers.doings(duty).stream().map(p -> Map.entry(p.id(), words.point(duty.id(), p.id()))),
                now));
        Arrays.stream(Inquiry.values())
                .filter(q -> q.isWord() || now.containsKey(q.name()))
                .map(q -> asked(
                        q.name(),
                        shown.said(q.with()),
                        Observation.of(q).stream().map(o -> Map.entry(o.name(), shown.said(o.with()))),
                        now))
                .forEach(asked::add);
        return asked;
    }

    private static AskedLine asked(
            String question, String label, Stream<Map.Entry<String, String>> options, Map<String, IncidentAnswer> now) {
        String answer = Optional.ofNullable(now.get(question))
                .map(IncidentAnswer::answer)
                .orElse("");
        return new AskedLine(
                question,
                label,
                options.map(o -> new Option(o.getKey(), o.getValue(), o.getKey().equals(answer)))
                        .toList(),
                !answer.isEmpty());
    }

    private String said(Duty duty, IncidentAnswer a, FigureText shown) {
        boolean doing = a.question().equals(IncidentAnswer.DOING);
        String question = doing
                ? shown.words("incident.asked.doing")
                : shown.said(Inquiry.valueOf(a.question()).with());
        String answer = a.answer().isEmpty()
                ? shown.words("incident.asked.unknown")
                : doing
                        ? words.point(duty.id(), a.answer())
                        : shown.said(Observation.valueOf(a.answer()).with());
        return shown.words("incident.asked.said", question, answer, a.authorName(), shown.when(a.answeredAt()));
    }
}

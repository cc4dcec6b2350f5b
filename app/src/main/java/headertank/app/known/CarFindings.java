package headertank.app.known;

import headertank.app.carlog.LogEvidence;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.evidence.Answer;
import headertank.app.evidence.Answers;
import headertank.app.evidence.CarEvidence;
import headertank.app.evidence.Lesson;
import headertank.app.evidence.Lessons;
import headertank.app.evidence.Question;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Shop;
import headertank.app.shop.Shops;
import headertank.app.stored.CanonicalJson;
import headertank.app.stored.Sha256;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.Version;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.HowKnown;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.result.Distribution;
import headertank.calc.result.NextEvidence;
import headertank.calc.verdict.DutyVerdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What follows for the newest revision of a car from what is known of it: worked out behind the pages, once, and kept. */
@Component
class CarFindings {

    private static final JsonMapper JSON = new JsonMapper();

    private final Revisions revisions;
    private final Lessons lessons;
    private final Answers answers;
    private final CarEvidence evidence;
    private final LogEvidence logs;
    private final Supplier<Rater> rater;
    private final Shops shops;
    private final CurrentUser user;

    CarFindings(
            Revisions revisions,
            Lessons lessons,
            Answers answers,
            CarEvidence evidence,
            LogEvidence logs,
            Supplier<Rater> rater,
            Shops shops,
            CurrentUser user) {
        this.revisions = revisions;
        this.lessons = lessons;
        this.answers = answers;
        this.evidence = evidence;
        this.logs = logs;
        this.rater = rater;
        this.shops = shops;
        this.user = user;
    }

    /**
     * A duty's margin.
     *
     * @param low 5 % [K], no number where there is none
     * @param high 95 % [K]
     * @param verdict name of the verdict
     */
    record Band(double low, double median, double high, String verdict) {}

    /** A duty without the evidence and with it. */
    record DutyPair(String duty, String label, Band before, Band after) {}

    /**
     * Something to find out.
     *
     * @param narrowsK by id of duty [K]
     */
    record Deed(NextEvidence.Deed deed, Map<String, Double> narrowsK) {}

    /** Duties of the newest revision that are switched on. */
    List<Duty> duties(Revision revision) {
        Rater here = rater.get();
        return revision.spec().dutyIds().stream()
                .map(here.duties()::get)
                .filter(Objects::nonNull)
                .toList();
    }

    /** Margins before and after; nothing while they are worked out, and where nothing is learned. */
    Optional<List<DutyPair>> margins(long carId) {
        return margin(carId).flatMap(answers::kept).map(CarFindings::pairs);
    }

    /** What to find out next, what narrows most first; nothing while it is worked out. */
    Optional<List<Deed>> next(long carId) {
        return nextQuestion(carId).flatMap(answers::kept).map(CarFindings::deeds);
    }

    /** Learns, then rates the newest revision with and without it. */
    void start(long carId) {
        lessons.start(carId);
        lessons.lesson(carId).ifPresent(lesson -> revisions.latest(carId).ifPresent(revision -> margin(carId)
                .ifPresent(q -> answers.start(q, () -> pairs(revision, lesson)))));
    }

    /** Has worked out what to find out next; first what is learned of the car, where that is not done yet. */
    void startNext(long carId) {
        lessons.start(carId);
        if (lessons.standing(carId).isPending()) {
            return;
        }
        Rater here = lessons.rater(carId);
        revisions.latest(carId).ifPresent(revision -> nextQuestion(carId)
                .ifPresent(q -> answers.start(q, () -> deeds(here, revision))));
    }

    /** Whether a log that was not learned from came out as the car is known; nothing where nobody asked, or while it is worked out. */
    Optional<Boolean> confirms(long carId, long logId) {
        return confirm(carId, logId)
                .flatMap(answers::kept)
                .map(a -> JSON.readTree(a.text()).required("confirms").booleanValue());
    }

    boolean isConfirming(long carId, long logId) {
        return confirm(carId, logId).flatMap(answers::begun).isPresent();
    }

    /** Has a log driven again by the car as it is known; nothing where it was learned from itself, or nothing is known of a run. */
    void startConfirming(long carId, long logId) {
        confirm(carId, logId).ifPresent(q -> {
            Rater here = lessons.rater(carId);
            Build build = revisions.latest(carId).orElseThrow().spec().build();
            answers.start(
                    q,
                    () -> CanonicalJson.write(Map.of(
                            "format",
                            1,
                            "confirms",
                            logs.read(carId, logId, here)
                                    .map(log -> here.confirms(build, log))
                                    .orElse(false))));
        });
    }

    /** Whether a log could confirm what is known of a car. */
    boolean mayConfirm(long carId, long logId) {
        return confirm(carId, logId).isPresent();
    }

    private Optional<Question> confirm(long carId, long logId) {
        return lessons.lesson(carId)
                .filter(l -> l.learned().known().compareTo(HowKnown.FROM_A_RUN) >= 0)
                .filter(l -> evidence.ofCar(carId).stream()
                        .noneMatch(p -> p.logId().filter(id -> id == logId).isPresent()
                                && l.pieces().contains(p.id())))
                .flatMap(l -> revisions
                        .latest(carId)
                        .map(r -> new Question(
                                user.shopId(),
                                carId,
                                Question.Kind.CONFIRMS,
                                CanonicalJson.write(Map.of(
                                        "calcCore", Version.CALC_CORE,
                                        "lesson", l.sha256(),
                                        "log", Sha256.hex(logs.said(carId, logId)),
                                        "revision", r.id())))));
    }

    private Optional<Question> margin(long carId) {
        return lessons.lesson(carId)
                .filter(l -> !l.learned().isNothing())
                .flatMap(l -> question(carId, Question.Kind.MARGINS, l.sha256()));
    }

    private Optional<Question> nextQuestion(long carId) {
        return question(
                carId,
                Question.Kind.NEXT,
                lessons.lesson(carId).map(Lesson::sha256).orElse(""));
    }

    private Optional<Question> question(long carId, Question.Kind kind, String lesson) {
        Shop shop = shops.byId(user.shopId());
        return revisions.latest(carId).filter(r -> !duties(r).isEmpty()).map(r -> {
            List<String> asked =
                    duties(r).stream().map(d -> Sha256.brief(d.toString())).toList();
            String key = CanonicalJson.write(Map.of(
                    "calcCore",
                    Version.CALC_CORE,
                    "duties",
                    asked,
                    "figures",
                    shop.figuresText(),
                    "lesson",
                    lesson,
                    "revision",
                    r.id(),
                    "thresholds",
                    shop.thresholdsText()));
            return new Question(shop.id(), carId, kind, key);
        });
    }

    private String pairs(Revision revision, Lesson lesson) {
        List<Duty> duties = duties(revision);
        Build build = revision.spec().build();
        List<Object> lines = new ArrayList<>();
        try {
            Rating before = rater.get().rate(build, duties);
            Rating after = lessons.knowing(lesson).rate(build, duties);
            for (int i = 0; i < duties.size(); i++) {
                lines.add(Map.of(
                        "duty", duties.get(i).id(),
                        "label", duties.get(i).label(),
                        "before", band(before.duties().get(i)),
                        "after", band(after.duties().get(i))));
            }
        } catch (InputException | OutOfRangeException impossible) {
            lines.clear();
        }
        return CanonicalJson.write(Map.of("format", 1, "duties", lines));
    }

    private static Map<String, Object> band(DutyVerdict verdict) {
        Map<String, Object> band = new LinkedHashMap<>();
        band.put("verdict", verdict.verdict().name());
        verdict.outcome().marginSpread().filter(CarFindings::isFinite).ifPresent(m -> {
            band.put("low", m.low());
            band.put("median", m.median());
            band.put("high", m.high());
        });
        return band;
    }

    private static boolean isFinite(Distribution margin) {
        return Double.isFinite(margin.low()) && Double.isFinite(margin.high());
    }

    private static List<DutyPair> pairs(Answer answer) {
        List<DutyPair> pairs = new ArrayList<>();
        for (JsonNode d : JSON.readTree(answer.text()).required("duties")) {
            pairs.add(new DutyPair(
                    d.required("duty").asString(),
                    d.required("label").asString(),
                    band(d.required("before")),
                    band(d.required("after"))));
        }
        return List.copyOf(pairs);
    }

    private static Band band(JsonNode band) {
        return new Band(
                band.path("low").asDouble(Double.NaN),
                band.path("median").asDouble(Double.NaN),
                band.path("high").asDouble(Double.NaN),
                band.required("verdict").asString());
    }

    private String deeds(Rater here, Revision revision) {
        List<Object> lines = new ArrayList<>();
        try {
            for (NextEvidence n : here.nextEvidence(revision.spec().build(), duties(revision))) {
                lines.add(Map.of("deed", n.deed().name(), "narrowsK", n.narrowsK()));
            }
        } catch (InputException | OutOfRangeException impossible) {
            lines.clear();
        }
        return CanonicalJson.write(Map.of("format", 1, "deeds", lines));
    }

    private static List<Deed> deeds(Answer answer) {
        List<Deed> deeds = new ArrayList<>();
        for (JsonNode d : JSON.readTree(answer.text()).required("deeds")) {
            Map<String, Double> narrows = new LinkedHashMap<>();
            d.required("narrowsK")
                    .properties()
                    .forEach(e -> narrows.put(e.getKey(), e.getValue().doubleValue()));
            deeds.add(new Deed(NextEvidence.Deed.valueOf(d.required("deed").asString()), narrows));
        }
        return List.copyOf(deeds);
    }
}

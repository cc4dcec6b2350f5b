package headertank.app.evidence;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.Shop;
import headertank.app.shop.Shops;
import headertank.app.stored.CanonicalJson;
import headertank.app.stored.Sha256;
import headertank.calc.Rater;
import headertank.calc.Version;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.Learned;
import headertank.calc.evidence.Evidence;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/**
 * What is known of a car by its evidence: learned when the evidence changes, kept, and given to whoever rates the car.
 *
 * <p>All that is learned from together was seen of the same parts. Where a car was rebuilt, that is the newest build that was logged, else
 * the newest of which anything was seen; calc-core gives parts that have changed since their prior back.
 */
@Component
public class Lessons {

    private final CarEvidence evidence;
    private final Answers answers;
    private final Supplier<Rater> rater;
    private final EvidenceReader reader;
    private final Shops shops;
    private final CurrentUser user;

    Lessons(
            CarEvidence evidence,
            Answers answers,
            Supplier<Rater> rater,
            EvidenceReader reader,
            Shops shops,
            CurrentUser user) {
        this.evidence = evidence;
        this.answers = answers;
        this.rater = rater;
        this.reader = reader;
        this.shops = shops;
        this.user = user;
    }

    /**
     * How it stands with what a car's evidence teaches.
     *
     * @param lesson what was learned; nothing while it is being learned, and without evidence that is used
     * @param asked whether there is evidence to learn from
     * @param since since when it is being learned
     * @param ofOtherParts ids of evidence that does not count, for the car had other parts then
     */
    public record Standing(Optional<Lesson> lesson, boolean asked, Optional<Instant> since, List<Long> ofOtherParts) {

        /** Whether there is something to learn that is not learned yet. */
        public boolean isPending() {
            return asked && lesson.isEmpty();
        }
    }

    /** The shop's rater, with what is known of a car; while that is being learned, without. */
    public Rater rater(long carId) {
        return lesson(carId).map(this::knowing).orElseGet(rater);
    }

    /** The shop's rater with what a lesson taught. */
    public Rater knowing(Lesson lesson) {
        return rater.get().knowing(lesson.learned());
    }

    /**
     * What was learned of a car once, whatever is used now.
     *
     * @throws headertank.app.problem.NotFoundException when nothing of the kind is kept
     */
    public Lesson kept(long carId, long lessonId) {
        return LearnedFormat.read(answers.byId(user.shopId(), carId, lessonId));
    }

    /** What is learned of a car from the evidence that is used now; nothing while that is being learned, and without any. */
    public Optional<Lesson> lesson(long carId) {
        return plan(carId).flatMap(p -> answers.kept(question(carId, p))).map(a -> read(carId, a));
    }

    /** What was seen of a car and taught; learned in place where that is not done yet. Never to be called within a transaction. */
    public Optional<Seen> ready(long carId) {
        return plan(carId).map(p -> {
            Lesson lesson = read(carId, answers.ready(question(carId, p), () -> learned(p)));
            List<Piece> used = Stream.concat(p.pieces().stream(), p.ofOtherParts().stream())
                    .sorted(Comparator.comparingLong(Piece::id))
                    .toList();
            return new Seen(
                    lesson,
                    p.pieces().stream()
                            .filter(e -> lesson.pieces().contains(e.id()))
                            .toList(),
                    used);
        });
    }

    /** Has it learned behind whoever asks, where that is not done yet. */
    public void start(long carId) {
        plan(carId).ifPresent(p -> answers.start(question(carId, p), () -> learned(p)));
    }

    public Standing standing(long carId) {
        Optional<LearningPlan> plan = plan(carId);
        Optional<Question> question = plan.map(p -> question(carId, p));
        return new Standing(
                question.flatMap(answers::kept).map(a -> read(carId, a)),
                plan.isPresent(),
                question.flatMap(answers::begun),
                plan.map(p -> p.ofOtherParts().stream().map(Piece::id).toList()).orElse(List.of()));
    }

    private Lesson read(long carId, Answer answer) {
        Lesson lesson = LearnedFormat.read(answer);
        return answers.isConfirmed(user.shopId(), carId, lesson.sha256()) ? lesson.confirmed() : lesson;
    }

    private Optional<LearningPlan> plan(long carId) {
        List<Piece> used = evidence.ofCar(carId).stream().filter(Piece::used).toList();
        return used.stream()
                .max(Comparator.comparing((Piece p) -> p.kind() == PieceKind.LOG)
                        .thenComparing(Piece::revisionNumber))
                .map(base -> {
                    List<Piece> together = new ArrayList<>();
                    List<Piece> others = new ArrayList<>();
                    used.forEach(p -> (sameParts(p, base) ? together : others).add(p));
                    return new LearningPlan(base.revisionId(), base.revisionNumber(), together, others);
                });
    }

    private boolean sameParts(Piece piece, Piece base) {
        return piece.revisionId() == base.revisionId() || reader.sameParts(piece.revisionId(), base.revisionId());
    }

    /** All that a lesson follows from: the car, what was seen of it, the duties that it names, the shop's figures, the physics. */
    private Question question(long carId, LearningPlan plan) {
        Shop shop = shops.byId(user.shopId());
        Rater here = rater.get();
        List<Object> pieces = new ArrayList<>();
        for (Piece p : plan.pieces()) {
            Map<String, Object> piece = new LinkedHashMap<>();
            piece.put("id", p.id());
            piece.put("sha256", p.sha256());
            Optional.ofNullable(here.duties().get(reader.dutyId(p)))
                    .ifPresent(d -> piece.put("duty", Sha256.brief(d.toString())));
            pieces.add(piece);
        }
        String key = CanonicalJson.write(Map.of(
                "calcCore",
                Version.CALC_CORE,
                "evidence",
                pieces,
                "figures",
                shop.figuresText(),
                "revision",
                plan.revisionId()));
        return new Question(shop.id(), carId, Question.Kind.LEARNED, key);
    }

    private String learned(LearningPlan plan) {
        Rater here = rater.get();
        List<Evidence> seen = new ArrayList<>();
        List<Long> from = new ArrayList<>();
        List<Long> unread = new ArrayList<>();
        for (Piece p : plan.pieces()) {
            Optional<Evidence> read = reader.read(p, here);
            read.ifPresent(seen::add);
            (read.isPresent() ? from : unread).add(p.id());
        }
        Build build = reader.build(plan.revisionId());
        if (seen.isEmpty()) {
            return LearnedFormat.write(Learned.NOTHING, from, unread, "");
        }
        try {
            Learned learned = here.learn(build, seen.toArray(new Evidence[0]));
            return LearnedFormat.write(learned, from, unread, "");
        } catch (IllegalArgumentException noAnswer) {
            return LearnedFormat.write(Learned.NOTHING, List.of(), unread, Lesson.NO_ANSWER);
        }
    }
}

package headertank.app.known;

import headertank.app.car.CarLine;
import headertank.app.carlog.LogEvidence;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.evidence.CarEvidence;
import headertank.app.evidence.Lesson;
import headertank.app.evidence.Lessons;
import headertank.app.evidence.Piece;
import headertank.app.evidence.PieceKind;
import headertank.app.field.FieldText;
import headertank.app.known.KnownView.Band;
import headertank.app.known.KnownView.DutyLine;
import headertank.app.known.KnownView.FactorLine;
import headertank.app.known.KnownView.PieceLine;
import headertank.app.language.Dates;
import headertank.app.unit.DecimalSign;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.HowKnown;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.Learned.Factor;
import headertank.calc.choice.SensorPlacement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** How well a car is known, in words, from what is kept: nothing is worked out here. */
@Component("knownWords")
class KnownWords {

    private static final int MOST_LINES = 8;
    private static final int HASH = 12;

    /** What keeps more of its spread than this is not worth a line [-]. */
    private static final double MUCH_LEFT = 0.9;

    private final CarEvidence evidence;
    private final Lessons lessons;
    private final CarFindings findings;
    private final Revisions revisions;
    private final LogEvidence logs;
    private final MessageSource messages;
    private final ShopFigures figures;
    private final FieldText fields;
    private final Dates dates;

    KnownWords(
            CarEvidence evidence,
            Lessons lessons,
            CarFindings findings,
            Revisions revisions,
            LogEvidence logs,
            MessageSource messages,
            ShopFigures figures,
            FieldText fields,
            Dates dates) {
        this.evidence = evidence;
        this.lessons = lessons;
        this.findings = findings;
        this.revisions = revisions;
        this.logs = logs;
        this.messages = messages;
        this.figures = figures;
        this.fields = fields;
        this.dates = dates;
    }

    String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }

    /** How well a car is known, and by what. */
    public KnownView of(long carId) {
        Lessons.Standing standing = lessons.standing(carId);
        Optional<Revision> newest = revisions.latest(carId);
        Optional<Lesson> lesson = standing.lesson();
        Optional<List<CarFindings.DutyPair>> margins = findings.margins(carId);
        boolean ratesNow = margins.isEmpty()
                && lesson.filter(l -> !l.learned().isNothing()).isPresent()
                && newest.filter(r -> !findings.duties(r).isEmpty()).isPresent();
        HowKnown known = known(lesson, newest);
        return new KnownView(
                say("known." + known),
                standing.isPending() || ratesNow,
                standing.isPending() ? learning(standing) : say("known.rating"),
                notes(lesson),
                lesson.map(l -> doubts(l.learned())).orElse(List.of()),
                margins.orElse(List.of()).stream().map(this::line).toList(),
                lesson.map(l -> factors(l.learned())).orElse(List.of()),
                pieces(carId, standing, newest));
    }

    /** How well each of some cars is known, by the id of the car. */
    public Map<Long, String> ofAll(List<CarLine> cars) {
        Set<Long> seen = evidence.seenOf(cars.stream().map(CarLine::id).toList());
        return cars.stream()
                .map(CarLine::id)
                .collect(Collectors.toMap(
                        id -> id,
                        id -> say(
                                "known.line",
                                say("known."
                                        + (seen.contains(id)
                                                ? known(lessons.lesson(id), revisions.latest(id))
                                                : HowKnown.FROM_THE_SHEET)))));
    }

    private static HowKnown known(Optional<Lesson> lesson, Optional<Revision> newest) {
        return lesson.flatMap(
                        l -> newest.map(r -> l.learned().after(r.spec().build()).known()))
                .orElse(HowKnown.FROM_THE_SHEET);
    }

    private String learning(Lessons.Standing standing) {
        return standing.since()
                .map(at -> say(
                        "known.learning.since",
                        Math.max(0, Duration.between(at, Instant.now()).toSeconds())))
                .orElseGet(() -> say("known.learning"));
    }

    private List<String> notes(Optional<Lesson> lesson) {
        List<String> notes = new ArrayList<>();
        lesson.ifPresent(l -> {
            if (!l.problem().isEmpty()) {
                notes.add(say("known.no-answer"));
            }
        });
        return notes;
    }

    private List<PieceLine> pieces(long carId, Lessons.Standing standing, Optional<Revision> newest) {
        List<PieceLine> lines = new ArrayList<>();
        for (Piece p : evidence.ofCar(carId)) {
            boolean unread =
                    standing.lesson().filter(l -> l.unread().contains(p.id())).isPresent();
            boolean otherParts = standing.ofOtherParts().contains(p.id());
            lines.add(new PieceLine(
                    p.id(),
                    what(p),
                    p.logId().orElse(null),
                    say("known.came", p.author(), dates.when(p.addedAt())),
                    p.used() && !unread && !otherParts,
                    p.used(),
                    state(p, unread, otherParts),
                    p.revisionNumber(),
                    newest.filter(r -> r.number() > p.revisionNumber()).isPresent(),
                    p.sha256().substring(0, HASH)));
        }
        return lines;
    }

    private String state(Piece piece, boolean unread, boolean otherParts) {
        String key = !piece.used()
                ? "known.left-out"
                : unread ? "known.unread" : otherParts ? "known.other-parts" : "known.used";
        String state = say(key, piece.revisionNumber());
        return piece.switched()
                .map(s -> say("known.state.because", state, s.reason(), s.author(), dates.when(s.at())))
                .orElse(state);
    }

    private String what(Piece piece) {
        if (piece.kind() == PieceKind.LOG) {
            return say("known.piece.log", logs.name(piece.carId(), piece.logId().orElseThrow()));
        }
        SettledText said = SettledText.of(piece.said());
        FigureText shown = figures.current();
        return say(
                "known.piece.settled",
                shown.temperature(said.shownK()),
                sensor(said.sensor()),
                fields.duty(said.duty()),
                fields.point(said.duty(), said.point()),
                shown.temperature(said.outsideK()),
                shown.span(said.sigmaK()));
    }

    private String sensor(Optional<SensorPlacement> sensor) {
        return sensor.map(s -> fields.option(BuildField.GAUGE_SENSOR, s.name()))
                .orElseGet(() -> say("known.reading.sensor.gauge"));
    }

    private List<String> doubts(Learned learned) {
        List<String> doubts = new ArrayList<>();
        if (learned.isBeyondBelief()) {
            doubts.add(say("carlog.doubt"));
        }
        if (learned.strain() > Learned.CREDIBLE) {
            doubts.add(say("carlog.doubt.together", number(learned.strain()), number(Learned.CREDIBLE)));
        }
        if (learned.unexplainedK() > Learned.CREDIBLE_UNEXPLAINED_K) {
            FigureText shown = figures.current();
            doubts.add(say(
                    "carlog.doubt.unexplained",
                    shown.span(learned.unexplainedK()),
                    shown.span(Learned.CREDIBLE_UNEXPLAINED_K)));
        }
        for (Factor f : learned.beyondBelief()) {
            doubts.add(say("carlog.doubt.factor", name(f), signed(f.moved())));
        }
        return doubts;
    }

    private DutyLine line(CarFindings.DutyPair pair) {
        return new DutyLine(fields.duty(pair.duty()), band(pair.before()), band(pair.after()));
    }

    private Band band(CarFindings.Band band) {
        FigureText shown = figures.current();
        boolean none = Double.isNaN(band.low());
        return new Band(
                none
                        ? say("carlog.none")
                        : say("carlog.range", shown.difference(band.low()), shown.difference(band.high())),
                none ? say("carlog.none") : shown.span(band.high() - band.low()),
                StoredVerdict.valueOf(band.verdict()));
    }

    private List<FactorLine> factors(Learned learned) {
        return learned.factors().stream()
                .filter(f -> f.left() < MUCH_LEFT)
                .sorted(Comparator.comparingDouble(Factor::left))
                .limit(MOST_LINES)
                .map(f -> new FactorLine(name(f), signed(f.moved()), Math.round(100 * f.left()) + "\u00a0%"))
                .toList();
    }

    private String name(Factor factor) {
        return BuildField.ofKey(factor.key()).isPresent()
                ? figures.label(factor.key())
                : say("carlog.factor." + factor.key());
    }

    /** How a log stands to what is known of its car. */
    public LogStanding ofLog(long carId, long logId) {
        Optional<Piece> piece = evidence.ofCar(carId).stream()
                .filter(p -> p.logId().filter(id -> id == logId).isPresent())
                .findFirst();
        boolean mayConfirm = findings.mayConfirm(carId, logId);
        String confirms = findings.confirms(carId, logId)
                .map(yes -> say(yes ? "known.confirms" : "known.confirms.not"))
                .orElse("");
        return new LogStanding(
                piece.isPresent(),
                piece.filter(Piece::used).isPresent(),
                mayConfirm && confirms.isEmpty() && !findings.isConfirming(carId, logId),
                confirms.isEmpty() && findings.isConfirming(carId, logId) ? say("known.confirming") : confirms);
    }

    /**
     * A log.
     *
     * @param isPiece whether it is evidence already
     * @param isUsed whether that is used
     * @param mayConfirm whether it could be held against what is known
     * @param confirms what came of that; empty when nobody has asked
     */
    record LogStanding(boolean isPiece, boolean isUsed, boolean mayConfirm, String confirms) {}

    /** What to find out next, the best first; empty while it is not worked out. */
    public List<NextLine> next(long carId) {
        FigureText shown = figures.current();
        return findings.next(carId).orElse(List.of()).stream()
                .map(d -> new NextLine(
                        d.deed().name(),
                        say("known.deed." + d.deed()),
                        say("known.deed." + d.deed() + ".how"),
                        say("known.deed." + d.deed() + ".caution"),
                        say("known.minutes", Math.round(d.deed().minutes())),
                        d.deed().tools().stream()
                                .map(t -> say("known.tool." + t))
                                .collect(Collectors.joining(", ")),
                        d.narrowsK().entrySet().stream()
                                .map(e -> say("known.narrows", fields.duty(e.getKey()), shown.span(e.getValue())))
                                .toList()))
                .toList();
    }

    /** The best thing to find out next in a few words, where it is worked out; else only that there is such a page. */
    public String best(long carId) {
        return findings.next(carId).stream()
                .flatMap(List::stream)
                .findFirst()
                .map(d -> say("known.next.brief", say("known.deed." + d.deed())))
                .orElseGet(() -> say("known.next.open"));
    }

    /**
     * Something to find out.
     *
     * @param deed its name
     * @param what to do
     * @param how to do it
     * @param caution what to look out for meanwhile
     * @param narrows expected narrowing by duty
     */
    record NextLine(
            String deed, String what, String how, String caution, String minutes, String tools, List<String> narrows) {}

    private static String number(double value) {
        return DecimalSign.in(String.format(Locale.ROOT, "%.1f", value));
    }

    /** To a tenth; what rounds to nothing has no sign. */
    static String signed(double value) {
        String size = number(Math.abs(value));
        return (size.matches("[0.,]*") ? "" : value < 0 ? "\u2212" : "+") + size;
    }
}

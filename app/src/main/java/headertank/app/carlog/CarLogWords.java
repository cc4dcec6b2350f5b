package headertank.app.carlog;

import headertank.app.carlog.Taught.DutyPair;
import headertank.app.carlog.Taught.Lesson;
import headertank.app.carlog.TaughtView.Band;
import headertank.app.carlog.TaughtView.DutyLine;
import headertank.app.carlog.TaughtView.FactorLine;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.language.ModelWords;
import headertank.app.unit.DecimalSign;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.Learned.Factor;
import headertank.calc.duty.Duty;
import headertank.calc.result.Distribution;
import headertank.calc.verdict.DutyVerdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Logs of cars in words, from the message files, in the units of the shop. */
@Component("carLogWords")
class CarLogWords {

    private static final int MOST_LINES = 8;

    /** What keeps more of its spread than this is not worth a line [-]. */
    private static final double MUCH_LEFT = 0.9;

    private final MessageSource messages;
    private final ShopFigures figures;
    private final ModelWords model;

    CarLogWords(MessageSource messages, ShopFigures figures, ModelWords model) {
        this.messages = messages;
        this.figures = figures;
        this.model = model;
    }

    String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }

    /** Name of a duty. */
    public String duty(Duty duty) {
        return model.duty(duty.id(), duty.label(), LocaleContextHolder.getLocale());
    }

    /** A length of time in minutes and seconds. */
    public String length(double seconds) {
        long s = Math.round(seconds);
        return s < 3600 ? say("log.length.min", s / 60, s % 60) : say("log.length.h", s / 3600, s % 3600 / 60);
    }

    /** Columns by what they tell, their number in what is kept, and their unit. */
    public List<String> columns(KeptLog log) {
        return log.reading().mapping().columns().stream()
                .map(c -> say(
                                "carlog.column",
                                say("log.quantity." + c.quantity()),
                                c.column() + 1,
                                c.unit().symbol())
                        .strip())
                .toList();
    }

    TaughtView view(Taught taught) {
        FigureText shown = figures.current();
        List<String> residual = new ArrayList<>();
        residual.add(say("carlog.off.before", shown.span(taught.before().rootMeanSquareK())));
        List<String> doubts = new ArrayList<>();
        List<DutyLine> duties = new ArrayList<>();
        List<FactorLine> lines = new ArrayList<>();
        Optional<Lesson> lesson = taught.lesson();
        lesson.ifPresent(l -> {
            residual.add(say("carlog.off.after", shown.span(l.after().rootMeanSquareK())));
            doubts.addAll(doubts(l.learned()));
            l.duties().forEach(p -> duties.add(line(p, shown)));
            l.learned().factors().stream()
                    .filter(f -> f.left() < MUCH_LEFT)
                    .sorted(Comparator.comparingDouble(Factor::left))
                    .limit(MOST_LINES)
                    .forEach(f -> lines.add(line(f)));
        });
        return new TaughtView(
                ReplayChart.of(taught, shown), facts(taught), residual, lesson.isPresent(), doubts, duties, lines);
    }

    private List<String> facts(Taught taught) {
        List<String> facts = new ArrayList<>();
        facts.add(say("carlog.driven", length(taught.rows().lengthS()), taught.revision()));
        if (taught.rows().intakeAssumed()) {
            facts.add(say("carlog.intake", figures.current().span(DriveRows.INTAKE_WARMER_K)));
        }
        return facts;
    }

    private List<String> doubts(Learned learned) {
        List<String> doubts = new ArrayList<>();
        if (learned.isBeyondBelief()) {
            doubts.add(say("carlog.doubt", number(learned.strain()), number(Learned.CREDIBLE)));
        }
        for (Factor f : learned.beyondBelief()) {
            doubts.add(say("carlog.doubt.factor", name(f), signed(f.moved())));
        }
        return doubts;
    }

    private DutyLine line(DutyPair pair, FigureText shown) {
        return new DutyLine(duty(pair.before().duty()), band(pair.before(), shown), band(pair.after(), shown));
    }

    private Band band(DutyVerdict verdict, FigureText shown) {
        Optional<Distribution> margin = verdict.outcome().marginSpread();
        return new Band(
                margin.map(m -> say("carlog.range", shown.difference(m.low()), shown.difference(m.high())))
                        .orElseGet(() -> say("carlog.none")),
                margin.filter(m -> Double.isFinite(m.low()) && Double.isFinite(m.high()))
                        .map(m -> shown.span(m.high() - m.low()))
                        .orElseGet(() -> say("carlog.none")),
                verdict.verdict());
    }

    private FactorLine line(Factor factor) {
        return new FactorLine(name(factor), signed(factor.moved()), Math.round(100 * factor.left()) + "\u00a0%");
    }

    private String name(Factor factor) {
        return BuildField.ofKey(factor.key()).isPresent()
                ? figures.label(factor.key())
                : say("carlog.factor." + factor.key());
    }

    private static String number(double value) {
        return DecimalSign.in(String.format(Locale.ROOT, "%.1f", value));
    }

    /** To a tenth; what rounds to nothing has no sign. */
    static String signed(double value) {
        String size = number(Math.abs(value));
        return (size.matches("[0.,]*") ? "" : value < 0 ? "\u2212" : "+") + size;
    }
}

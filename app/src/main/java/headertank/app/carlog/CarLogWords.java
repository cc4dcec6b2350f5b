package headertank.app.carlog;

import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.language.ModelWords;
import headertank.calc.duty.Duty;
import java.util.ArrayList;
import java.util.List;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Logs of cars in words, from the message files, in the units of the shop. */
@Component("carLogWords")
class CarLogWords {

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
        taught.after().ifPresent(r -> residual.add(say("carlog.off.after", shown.span(r.rootMeanSquareK()))));
        return new TaughtView(ReplayChart.of(taught, shown), facts(taught), residual);
    }

    private List<String> facts(Taught taught) {
        List<String> facts = new ArrayList<>();
        facts.add(say("carlog.driven", length(taught.rows().lengthS()), taught.revision()));
        if (taught.rows().intakeAssumed()) {
            facts.add(say("carlog.intake", figures.current().span(DriveRows.INTAKE_WARMER_K)));
        }
        return facts;
    }
}

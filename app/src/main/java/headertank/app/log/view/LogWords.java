package headertank.app.log.view;

import headertank.app.log.file.LogHead;
import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogRefused;
import headertank.app.log.file.LogSource;
import headertank.app.log.file.TimeColumn;
import headertank.app.log.read.BadRow;
import headertank.app.log.read.ColumnGuess;
import headertank.app.log.read.ColumnSummary;
import headertank.app.log.read.LogMapping;
import headertank.app.log.read.LogMapping.Chosen;
import headertank.app.log.read.LogQuantity;
import headertank.app.log.read.LogReader;
import headertank.app.log.read.LogSummary;
import headertank.app.shop.Shops;
import headertank.app.unit.Dimension;
import headertank.app.unit.Scaling;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;

/** Logs in words, from the message files, in the units of the shop. */
@Component
public class LogWords {

    private static final int SHOWN_ROWS = 5;
    private static final int LONGEST_CELL = 40;

    private final MessageSource messages;
    private final Shops shops;

    LogWords(MessageSource messages, Shops shops) {
        this.messages = messages;
        this.shops = shops;
    }

    /** Name of a quantity. */
    private String name(LogQuantity quantity) {
        return say("log.quantity." + quantity);
    }

    /** A reading in the unit of the shop. */
    private String reading(LogQuantity quantity, double si) {
        if (quantity == LogQuantity.YAW_RATE) {
            double number =
                    Scaling.find("°/s", Dimension.ROTATION).orElseThrow().fromSi(si);
            return Units.number(number, Dimension.RATIO, UnitSystem.METRIC) + " °/s";
        }
        return Units.show(si, quantity.dimension(), shops.current().unitSystem());
    }

    /** Why a file is no log. */
    private String refused(LogRefused e) {
        return say("log.refused." + e.reason(), e.line(), e.found(), e.most());
    }

    /**
     * Looks a log through, its time as somebody chose it.
     *
     * @param faults takes why it is refused, at its field {@code log}
     * @return what it holds; empty when it is refused
     */
    public Optional<LogSummary> survey(LogSource log, MappingForm said, BindingResult faults) throws IOException {
        try {
            LogSummary guessed = LogReader.survey(log, LogLimits.USUAL);
            Optional<TimeColumn> time = said.time(guessed.head());
            return Optional.of(time.isEmpty() ? guessed : LogReader.survey(log, time.get(), LogLimits.USUAL));
        } catch (LogRefused e) {
            faults.rejectValue("log", "", refused(e));
            return Optional.empty();
        }
    }

    /** @param shown what the page is about */
    public LogView view(LogSummary summary, Optional<LogMapping> mapping, List<LogQuantity> shown) {
        LogHead head = summary.head();
        List<LogView.Option> options = IntStream.range(0, head.headings().size())
                .mapToObj(i -> new LogView.Option(
                        String.valueOf(i), brief(head.headings().get(i).text())))
                .toList();
        List<LogView.Line> lines =
                shown.stream().map(q -> line(q, summary, mapping)).toList();
        return new LogView(
                head.columnSet(),
                facts(summary),
                time(mapping.map(LogMapping::time).or(head::time)),
                lines,
                options,
                summary.shownBad().stream().map(this::bad).toList(),
                options.stream().map(LogView.Option::heading).toList(),
                head.rows().stream()
                        .limit(SHOWN_ROWS)
                        .map(row -> row.stream()
                                .limit(head.headings().size())
                                .map(LogWords::brief)
                                .toList())
                        .toList());
    }

    private LogView.Time time(Optional<TimeColumn> time) {
        List<String> units =
                Scaling.of(Dimension.DURATION).stream().map(Scaling::symbol).toList();
        return time.map(t -> new LogView.Time(
                        String.valueOf(t.index()), t.writing().name(), t.unit(), units, say("log.time.why." + t.why())))
                .orElseGet(() -> new LogView.Time("", "NUMBER", "s", units, say("log.time.none")));
    }

    private LogView.Line line(LogQuantity q, LogSummary summary, Optional<LogMapping> mapping) {
        Optional<Chosen> chosen = mapping.isPresent()
                ? mapping.get().of(q)
                : summary.guess(q).map(g -> new Chosen(q, g.column(), g.unit()));
        List<String> units =
                Scaling.of(q.dimension()).stream().map(Scaling::symbol).toList();
        if (chosen.isEmpty()) {
            return new LogView.Line(q.name(), name(q), "", units.get(0), units, "", say("log.none"), "");
        }
        Chosen c = chosen.get();
        Optional<ColumnGuess> guess = summary.guess(q)
                .filter(g -> g.column() == c.column()
                        && g.unit().symbol().equals(c.unit().symbol()));
        return new LogView.Line(
                q.name(),
                name(q),
                String.valueOf(c.column()),
                c.unit().symbol(),
                units,
                guess.map(g -> say("log.sure." + g.level())).orElse(""),
                guess.map(this::why).orElseGet(() -> say("log.chosen")),
                range(q, c, summary.columns().get(c.column())));
    }

    private String why(ColumnGuess guess) {
        List<String> reasons = guess.reasons().stream()
                .map(r -> say("log.why." + r.why(), r.what()))
                .toList();
        return String.join("; ", reasons);
    }

    private String range(LogQuantity q, Chosen c, ColumnSummary column) {
        return column.readings() == 0
                ? say("log.range.none")
                : say(
                        "log.range",
                        reading(q, c.unit().toSi(column.least())),
                        reading(q, c.unit().toSi(column.greatest())));
    }

    /** Rows, stretches and what is odd, each in a sentence. */
    private List<String> facts(LogSummary s) {
        List<String> facts = new ArrayList<>();
        facts.add(
                say("log.fact.rows", s.rows(), length(s.lengthS()), s.columns().size()));
        if (s.badRows() > 0) {
            facts.add(say("log.fact.bad", s.badRows()));
        }
        if (s.stretchCount() > 1) {
            facts.add(say("log.fact.stretches", s.stretchCount()));
        }
        if (s.gaps() > 0) {
            facts.add(say("log.fact.gaps", s.gaps(), length(s.longestGapS())));
        }
        if (s.repeated() > 0) {
            facts.add(say("log.fact.repeated", s.repeated()));
        }
        List<String> still = s.columns().stream()
                .filter(ColumnSummary::stands)
                .map(ColumnSummary::heading)
                .map(LogWords::brief)
                .limit(SHOWN_ROWS)
                .toList();
        if (!still.isEmpty()) {
            facts.add(say("log.fact.still", String.join(", ", still)));
        }
        return facts;
    }

    /** A length of time in minutes and seconds. */
    private String length(double seconds) {
        long s = Math.round(seconds);
        return s < 3600 ? say("log.length.min", s / 60, s % 60) : say("log.length.h", s / 3600, s % 3600 / 60);
    }

    private LogView.Bad bad(BadRow row) {
        return new LogView.Bad(row.line(), brief(row.column()), row.value(), say("log.fault." + row.fault()));
    }

    private static String brief(String text) {
        String visible = text.replaceAll("\\p{Cntrl}", " ");
        return visible.length() <= LONGEST_CELL ? visible : visible.substring(0, LONGEST_CELL - 1) + "…";
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }
}

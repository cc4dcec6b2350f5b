package headertank.app.check.figure;

import headertank.app.chart.CurveChart.Tick;
import headertank.app.chart.Scale;
import headertank.app.chart.Ticks;
import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredMessage;
import headertank.app.check.stored.StoredMessage.Amount;
import headertank.app.language.FigureWords;
import headertank.app.language.ModelWords;
import headertank.app.unit.DecimalSign;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import headertank.calc.result.Distribution;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;

/** Figures of a check as one shop reads them. Made once for a page or a sheet by {@link ShopFigures}. */
public final class FigureText {

    private final UnitSystem system;
    private final MessageSource messages;
    private final ModelWords words;
    private final Function<Instant, String> when;
    private final Locale locale;
    private final FigureWords figures;

    FigureText(
            UnitSystem system,
            MessageSource messages,
            ModelWords words,
            Function<Instant, String> when,
            Locale locale) {
        this.system = system;
        this.messages = messages;
        this.words = words;
        this.when = when;
        this.locale = locale;
        this.figures = new FigureWords(messages, system, locale);
    }

    /** A temperature; a dash when there is none. */
    public String temperature(double kelvin) {
        return figures.of(SiFigure.temperature(kelvin));
    }

    /** A temperature that somebody has set: without decimals where it has none. */
    public String setTemperature(double kelvin) {
        double shown = Units.value(kelvin, Dimension.TEMPERATURE, system);
        return Math.abs(shown - Math.rint(shown)) < 0.05
                ? wholeDegrees(kelvin) + "\u00a0" + degree()
                : temperature(kelvin);
    }

    /** A limiting ambient temperature; infinite when no day reaches it. */
    public String day(double kelvin) {
        return kelvin == Double.POSITIVE_INFINITY ? text("check.no-day") : temperature(kelvin);
    }

    /**
     * The hottest day on which a duty is expected to hold. A check of before it was looked for has one where a steady state decided,
     * and none where the run did.
     */
    public String hottestDay(DutyResult duty) {
        if (duty.hottestDay().isEmpty()) {
            return duty.decidedByRun()
                    ? text("check.not-computed")
                    : duty.deciding()
                            .steady()
                            .map(s -> day(s.limitingAmbientK()))
                            .orElseGet(() -> text("check.hottest-day.never"));
        }
        DutyResult.HottestDay day = duty.hottestDay().get();
        if (Double.isInfinite(day.ambientK())) {
            return day.ambientK() < 0
                    ? text("check.hottest-day.never")
                    : text("check.hottest-day.above", temperature(day.triedToK()));
        }
        return temperature(day.ambientK());
    }

    /** What meets the limit on that day; empty where no such day was found. */
    public String hottestDayBy(DutyResult duty) {
        return duty.hottestDay()
                .filter(d -> Double.isFinite(d.ambientK()))
                .map(d -> text(
                        d.byRun() ? "check.hottest-day.run" : "check.hottest-day.steady",
                        point(duty, d.decidingPoint())))
                .orElse("");
    }

    /** What stands before a finding. */
    public FindingSign sign(DutyResult.FindingLine finding) {
        return FindingSign.of(finding);
    }

    /** A difference of temperatures with its sign. */
    public String difference(double kelvin) {
        if (Double.isNaN(kelvin)) {
            return text("check.none");
        }
        if (Double.isInfinite(kelvin)) {
            return text(kelvin < 0 ? "check.below-any" : "check.above-any");
        }
        return figures.signed(kelvin);
    }

    /** The coolant margin of a whole duty: without a balance there is none. */
    public String margin(double kelvin) {
        return Double.isInfinite(kelvin) && kelvin < 0 ? text("check.no-balance.short") : difference(kelvin);
    }

    /** From 5 to 95 %. */
    public String range(DutyResult.Range range) {
        return text("check.range", difference(range.low()), difference(range.high()));
    }

    /** A probability estimated from so many samples, with its sampling error: none found is not none there. */
    public String probability(double p, int samples) {
        if (Double.isNaN(p) || samples == 0) {
            return text("check.not-computed");
        }
        if (p * samples < 1) {
            return text("check.probability.under");
        }
        return p * samples > samples - 1
                ? text("check.probability.over")
                : percent(p) + " \u00b1 " + percent(Distribution.standardError(p, samples));
    }

    /** A probability estimated from so many samples, without its sampling error. */
    public String chance(double p, int samples) {
        return Double.isNaN(p) || samples == 0 || p * samples < 1 || p * samples > samples - 1
                ? probability(p, samples)
                : percent(p);
    }

    private String percent(double share) {
        String digits = share < 0.01 ? "%.1f %%" : "%.0f %%";
        return signed(DecimalSign.in(String.format(Locale.ROOT, digits, 100 * share)), "");
    }

    /** A share as a percentage. */
    public String share(double share) {
        return Double.isFinite(share) ? Units.show(share, Dimension.FRACTION, system) : text("check.none");
    }

    public String current(double ampere) {
        return figures.of(SiFigure.current(ampere));
    }

    /** A length of time in minutes and seconds. */
    public String duration(double seconds) {
        long s = Math.round(seconds);
        return s < 60 ? s + " s" : s % 60 == 0 ? s / 60 + " min" : s / 60 + " min " + s % 60 + " s";
    }

    /** A figure with the unit that calc-core gave it; {@code K} is a difference, {@code K absolute} a temperature. */
    public String figure(double value, String unit) {
        if (!Double.isFinite(value)) {
            return unit.equals("K") ? difference(value) : text("check.none");
        }
        return switch (unit) {
            case "K" -> difference(value);
            case "K absolute" -> temperature(value);
            case "A" -> current(value);
            case "Pa" -> signed(Units.show(value, Dimension.PRESSURE_GAUGE, system), "");
            case "kPa" -> signed(Units.show(1000 * value, Dimension.PRESSURE_GAUGE, system), "");
            case "W" -> Units.show(value, Dimension.POWER, system);
            case "m3/s" -> Units.show(value, Dimension.AIR_FLOW, system);
            case "s" -> duration(value);
            case "-" -> plain(value);
            default -> plain(value) + " " + unit;
        };
    }

    /** A number of the working in its SI unit, four digits. */
    public String digits(double value) {
        return Double.isFinite(value) ? DecimalSign.in(String.format(Locale.ROOT, "%.4g", value)) : text("check.none");
    }

    /** A number that only has to be small. */
    public String tiny(double value) {
        return Double.isFinite(value) ? DecimalSign.in(String.format(Locale.ROOT, "%.1e", value)) : text("check.none");
    }

    /** What a check says, in the language and units of the page. */
    public String said(StoredMessage message) {
        return words.of(StoredWords.message(message), system, locale);
    }

    /** What calc-core says, likewise. */
    public String said(Message message) {
        return words.of(message, system, locale);
    }

    /** A figure of calc-core; a difference of temperatures has its sign. */
    public String figure(SiFigure figure) {
        return figure.kind() == FigureKind.TEMPERATURE_DIFFERENCE ? difference(figure.si()) : figures.of(figure);
    }

    /** Name of a duty. */
    public String duty(DutyResult duty) {
        return words.duty(duty.id(), duty.label(), locale);
    }

    /** Name of a duty in a list of checks. */
    public String duty(CheckLine.DutyVerdictLine line) {
        return words.duty(line.duty(), line.label(), locale);
    }

    /** What a duty is called for short. */
    public String shortDuty(DutyResult duty) {
        return inShort(duty(duty));
    }

    /** What stands before the colon of a duty's name. */
    public static String inShort(String name) {
        return name.split(":", 2)[0].strip();
    }

    /** Name of the duty with this id; the id when there is none. */
    public String duty(CheckResult check, String id) {
        return check.duty(id).map(this::duty).orElse(id);
    }

    /** Name of an operating point. */
    public String point(DutyResult duty, String id) {
        return words.point(duty.id(), id, duty.pointLabel(id), locale);
    }

    /** Name of an operating point of the duty with this id; its own id when there is none. */
    public String point(CheckResult check, String duty, String id) {
        return check.duty(duty).map(d -> point(d, id)).orElse(id);
    }

    /** A stored figure. */
    public String figure(Amount figure) {
        return figure(StoredWords.figure(figure));
    }

    /** How well a car was known, and by what; more words where that does not fit the car. */
    public String known(CheckResult.HowKnown known) {
        String how = words("known." + known.how());
        String by = known.evidence().entrySet().stream()
                .map(e -> words("known.count." + e.getKey(), e.getValue()))
                .collect(Collectors.joining(", "));
        return words(by.isEmpty() ? "known.line" : "known.line.by", how, by);
    }

    /** A day with its time at the shop. */
    public String when(Instant instant) {
        return when.apply(instant);
    }

    public String voltage(double volt) {
        return figures.of(volt, FigureKind.VOLTAGE);
    }

    /** Coolant through a radiator. */
    public String liquidFlow(double m3PerS) {
        return figures.of(SiFigure.liquidFlow(m3PerS));
    }

    public String power(double watt) {
        return figures.of(SiFigure.power(watt));
    }

    /** A difference of temperatures that has no sign, as a swing. */
    public String span(double kelvin) {
        return figures.of(SiFigure.difference(kelvin));
    }

    /** Text of these pages. */
    public String words(String key, Object... arguments) {
        return text(key, arguments);
    }

    /** An operating point in one word where its id is one in the reader's language; else the id. */
    public String shortPoint(String id) {
        return messages.getMessage("check.chart.point." + id, null, id, locale);
    }

    /** Marks of a scale of road speeds. */
    public List<Tick> speedTicks(Scale mPerS) {
        return Ticks.of(mPerS, Dimension.SPEED, system, 20, 3);
    }

    /** Symbol of the shop's unit of speed. */
    public String speedUnit() {
        return Dimension.SPEED.symbol(system);
    }

    public String temperatureNumber(double kelvin) {
        return Units.number(kelvin, Dimension.TEMPERATURE, system);
    }

    /** A temperature to the degree, alone. */
    public long wholeDegrees(double kelvin) {
        return Math.round(Units.value(kelvin, Dimension.TEMPERATURE, system));
    }

    /** Marks of a scale of temperatures. */
    public List<Tick> temperatureTicks(Scale kelvin) {
        return Ticks.of(kelvin, Dimension.TEMPERATURE, system, leastDegrees(), 7);
    }

    /** Marks of a scale of differences of temperatures, with their signs. */
    public List<Tick> differenceTicks(Scale kelvin) {
        return Ticks.signed(Ticks.of(kelvin, Dimension.TEMPERATURE_DIFFERENCE, system, leastDegrees(), 7));
    }

    private double leastDegrees() {
        return system == UnitSystem.US ? 10 : 5;
    }

    /** Symbol of the shop's unit of temperature. */
    public String degree() {
        return Dimension.TEMPERATURE.symbol(system);
    }

    /** Symbol of the shop's unit of a difference of temperatures. */
    public String degreeDifference() {
        return Dimension.TEMPERATURE_DIFFERENCE.symbol(system);
    }

    private static String plain(double value) {
        String s = value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : Math.abs(value) >= 100
                        ? String.format(Locale.ROOT, "%.0f", value)
                        : String.format(Locale.ROOT, "%.2f", value);
        return signed(DecimalSign.in(s), "");
    }

    /** With a real minus sign, and no line break between number and unit. */
    private static String signed(String number, String sign) {
        String whole = number.replace(' ', '\u00a0');
        return whole.startsWith("-") ? "\u2212" + whole.substring(1) : sign + whole;
    }

    private String text(String key, Object... arguments) {
        return messages.getMessage(key, arguments, locale);
    }
}

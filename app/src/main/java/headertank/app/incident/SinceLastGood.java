package headertank.app.incident;

import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredCheck;
import headertank.app.evidence.Lessons;
import headertank.app.field.FieldText;
import headertank.app.incident.IncidentComparison.FieldLine;
import headertank.app.incident.IncidentComparison.PartLine;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Change;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.Entry;
import headertank.calc.result.Attribution;
import headertank.calc.result.Balance;
import headertank.calc.result.Distribution;
import headertank.calc.verdict.DutyOutcome;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Puts a report beside the last good check and shares out the lost degrees among what changed. */
@Component
class SinceLastGood {

    /** Samples of the range in which a reading was to be expected: its ends are sure to a kelvin or so. */
    private static final int SAMPLES = 128;

    private final Checks checks;
    private final Revisions revisions;
    private final ReportedDuty reportedDuty;
    private final Supplier<Rater> rater;
    private final Lessons lessons;
    private final FieldText words;
    private final MessageSource messages;

    SinceLastGood(
            Checks checks,
            Revisions revisions,
            ReportedDuty reportedDuty,
            Supplier<Rater> rater,
            Lessons lessons,
            FieldText words,
            MessageSource messages) {
        this.checks = checks;
        this.revisions = revisions;
        this.reportedDuty = reportedDuty;
        this.rater = rater;
        this.lessons = lessons;
        this.words = words;
        this.messages = messages;
    }

    IncidentComparison of(Incident incident) {
        Optional<StoredCheck> good = incident.comparedCheckId().map(checks::byId);
        Revision thatDay = revisions.byId(incident.revisionId());
        Revision base =
                good.map(g -> revisions.byId(g.line().revisionId())).orElseGet(() -> revisions.of(incident.carId(), 1));
        Duty duty = reportedDuty.of(incident, good, thatDay);
        Build before = base.spec().build();
        Optional<Build> inThatAir =
                incident.ambientK().flatMap(k -> withAmbient(thatDay.spec().build(), k));
        Build after = inThatAir.orElse(thatDay.spec().build());
        Rater known = lessons.rater(incident.carId());
        Attribution shares = known.compare(before, after, duty);
        Rating now = known.preview(after, List.of(duty));
        DutyOutcome outcome = known.expected(after, duty, SAMPLES);
        Optional<DutyResult> predicted = good.flatMap(g -> g.result().duty(duty.id()));
        double coolant = predicted
                .map(d -> good.get().result().coolantLimitK() - d.coolantMarginK())
                .orElse(Double.NaN);
        double reading =
                predicted.map(d -> coolant + offsetK(incident.place(), d)).orElse(Double.NaN);
        double atLimitK = now.resolved().value(BuildField.COOLANT_LIMIT) + offsetK(incident.place(), outcome);
        double knownK = knownBesideK(outcome.coolantMarginK() - shares.afterK());
        double expectedK = atLimitK - shares.afterK() - knownK;
        Distribution spread = outcome.marginSpread().orElseThrow();
        return new IncidentComparison(
                duty.id(),
                good.map(StoredCheck::line),
                predicted,
                base.number(),
                coolant,
                reading,
                shares.beforeK() + knownK,
                shares.afterK() + knownK,
                expectedK,
                atLimitK - spread.high(),
                atLimitK - spread.low(),
                changes(shares, rater.get().resolve(before), rater.get().resolve(after), inThatAir.isPresent()),
                now.flags(),
                inThatAir.isPresent());
    }

    /** What is known of the car beside its values; the quick run of a comparison and the whole one are no more than 20 mK apart. */
    private static double knownBesideK(double moreK) {
        return Double.isFinite(moreK) && Math.abs(moreK) > 0.05 ? moreK : 0;
    }

    /** Empty when the day's air is outside what the models accept. */
    private static Optional<Build> withAmbient(Build build, double ambientK) {
        return BuildField.AMBIENT.allowed().contains(ambientK) ? Optional.of(build.inAir(ambientK)) : Optional.empty();
    }

    /** What a sensor at this place shows above the coolant that leaves the engine [K]. */
    private static double offsetK(SensorPlacement place, DutyResult duty) {
        return duty.deciding()
                .steady()
                .map(s -> Rater.sensorShowsK(place, s.engineOutK(), s.radiatorOutK(), s.ambientK(), s.radiatorM3PerS())
                        - s.engineOutK())
                .orElse(0.0);
    }

    private static double offsetK(SensorPlacement place, DutyOutcome outcome) {
        return outcome.deciding().balance() instanceof Balance.Steady s
                ? Rater.sensorShowsK(place, s) - s.engineOutK()
                : 0;
    }

    private List<PartLine> changes(Attribution shares, Resolved before, Resolved after, boolean weather) {
        return shares.parts().stream().map(p -> line(p, before, after, weather)).toList();
    }

    private PartLine line(Attribution.PartEffect p, Resolved before, Resolved after, boolean weather) {
        boolean isWeather =
                weather && p.effects().stream().anyMatch(e -> e.change().key().equals(BuildField.AMBIENT.key()));
        List<FieldLine> fields =
                p.effects().stream().flatMap(e -> fields(e, before, after)).toList();
        String label = isWeather
                ? text("incident.change.weather")
                : p.part().map(words::group).orElseGet(() -> fields.get(0).label());
        return new PartLine(label, fields, p.shareK(), p.aloneK(), p.undoneK(), isWeather);
    }

    /** What changes together has one share, which stands at its first field. */
    private Stream<FieldLine> fields(Attribution.Effect e, Resolved before, Resolved after) {
        Change change = e.change();
        if (change.field().isEmpty()) {
            return Stream.of(new FieldLine(
                    text("incident.change.class"),
                    words.carClass(before.build().carClass()),
                    words.carClass(after.build().carClass()),
                    e.shareK()));
        }
        return Stream.concat(change.field().stream(), change.with().stream())
                .map(f -> new FieldLine(
                        words.label(f.field()),
                        entry(f.field(), f.before(), before),
                        entry(f.field(), f.after(), after),
                        f == change.field().get() ? e.shareK() : Double.NaN));
    }

    private String entry(BuildField field, Optional<Entry> stated, Resolved resolved) {
        if (stated.isPresent()) {
            return words.show(field, stated.get()) + " ("
                    + words.provenance(stated.get().from()) + ")";
        }
        if (field.isChoice() ? resolved.token(field).isEmpty() : !resolved.has(field)) {
            return text("check.none");
        }
        String assumed = field.isChoice()
                ? words.option(field, resolved.token(field))
                : words.show(field, resolved.value(field));
        return text("incident.assumed", assumed);
    }

    private String text(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }
}

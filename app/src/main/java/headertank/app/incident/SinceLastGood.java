package headertank.app.incident;

import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredCheck;
import headertank.app.field.FieldText;
import headertank.app.incident.IncidentComparison.ChangeLine;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Change;
import headertank.calc.carspec.FieldChange;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.Entry;
import headertank.calc.result.Attribution;
import headertank.calc.result.Balance;
import headertank.calc.verdict.DutyOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Puts a report beside the last good check and shares out the lost degrees among what changed. */
@Component
class SinceLastGood {

    private final Checks checks;
    private final Revisions revisions;
    private final Supplier<Rater> rater;
    private final FieldText words;
    private final MessageSource messages;

    SinceLastGood(Checks checks, Revisions revisions, Supplier<Rater> rater, FieldText words, MessageSource messages) {
        this.checks = checks;
        this.revisions = revisions;
        this.rater = rater;
        this.words = words;
        this.messages = messages;
    }

    IncidentComparison of(Incident incident) {
        Optional<StoredCheck> good = incident.comparedCheckId().map(checks::byId);
        Revision thatDay = revisions.byId(incident.revisionId());
        Revision base =
                good.map(g -> revisions.byId(g.line().revisionId())).orElseGet(() -> revisions.of(incident.carId(), 1));
        Duty duty = duty(incident, good, thatDay);
        Build before = base.spec().build();
        Optional<Build> inThatAir =
                incident.ambientK().flatMap(k -> withAmbient(thatDay.spec().build(), k));
        Build after = inThatAir.orElse(thatDay.spec().build());
        Attribution shares = rater.get().compare(before, after, duty);
        Rating now = rater.get().preview(after, List.of(duty));
        DutyOutcome outcome = now.duties().get(0).outcome();
        Optional<DutyResult> predicted = good.flatMap(g -> g.result().duty(duty.id()));
        double coolant = predicted
                .map(d -> good.get().result().coolantLimitK() - d.coolantMarginK())
                .orElse(Double.NaN);
        double reading =
                predicted.map(d -> coolant + offsetK(incident.place(), d)).orElse(Double.NaN);
        double limitThatDay = now.resolved().value(BuildField.COOLANT_LIMIT);
        return new IncidentComparison(
                duty.id(),
                good.map(StoredCheck::line),
                predicted,
                base.number(),
                coolant,
                reading,
                shares.beforeK(),
                shares.afterK(),
                limitThatDay - shares.afterK() + offsetK(incident.place(), outcome),
                changes(shares, rater.get().resolve(before), now.resolved(), inThatAir.isPresent()),
                now.flags(),
                inThatAir.isPresent());
    }

    /** The reported duty; else the hardest of the good check; else the first of the revision. */
    private Duty duty(Incident incident, Optional<StoredCheck> good, Revision thatDay) {
        Map<String, Duty> known = rater.get().duties();
        if (known.containsKey(incident.duty())) {
            return known.get(incident.duty());
        }
        String hardest = good.flatMap(g -> g.result().duties().stream()
                        .filter(d -> known.containsKey(d.id()))
                        .min((a, b) -> Double.compare(a.coolantMarginK(), b.coolantMarginK())))
                .map(DutyResult::id)
                .orElse(thatDay.spec().dutyIds().get(0));
        return known.getOrDefault(hardest, known.values().iterator().next());
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

    private List<ChangeLine> changes(Attribution shares, Resolved before, Resolved after, boolean weather) {
        List<ChangeLine> lines = new ArrayList<>();
        for (Attribution.Effect e : shares.effects()) {
            boolean isWeather = weather
                    && e.change()
                            .field()
                            .map(f -> f.field() == BuildField.AMBIENT)
                            .orElse(false);
            lines.add(line(e, before, after, isWeather));
        }
        return lines;
    }

    private ChangeLine line(Attribution.Effect e, Resolved before, Resolved after, boolean isWeather) {
        Change change = e.change();
        if (change.field().isEmpty()) {
            return new ChangeLine(
                    text("incident.change.class"),
                    words.carClass(before.build().carClass()),
                    words.carClass(after.build().carClass()),
                    e.shareK(),
                    e.aloneK(),
                    e.undoneK(),
                    false);
        }
        FieldChange f = change.field().get();
        return new ChangeLine(
                isWeather ? text("incident.change.weather") : words.label(f.field()),
                entry(f.field(), f.before(), before),
                entry(f.field(), f.after(), after),
                e.shareK(),
                e.aloneK(),
                e.undoneK(),
                isWeather);
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

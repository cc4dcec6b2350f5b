package headertank.app.settings;

import headertank.app.shop.Paper;
import headertank.app.shop.Shop;
import headertank.app.shop.TimeZones;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.verdict.Threshold;
import headertank.calc.verdict.Thresholds;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.TreeMap;
import org.springframework.validation.Errors;

/** Turns what the owner typed into settings, or into a sentence for each fault. */
final class SettingsReader {

    static final int MOST_DAYS = 730;

    private static final int LONGEST_NAME = 100;

    private final Shop now;
    private final SettingsForm form;
    private final Errors faults;

    /** @param now what the shop has: a field that still reads as it was shown keeps its exact value */
    SettingsReader(Shop now, SettingsForm form, Errors faults) {
        this.now = now;
        this.form = form;
        this.faults = faults;
    }

    /** Empty when there are faults. */
    Optional<Shop> read() {
        if (form.name().isEmpty()
                || form.name().length() > LONGEST_NAME
                || form.name().chars().anyMatch(c -> c < 32)) {
            faults.rejectValue("name", form.name().isEmpty() ? "account.shop.missing" : "account.name.long");
        }
        UnitSystem units = choice("unitSystem", form.unitSystem(), UnitSystem.values(), now.unitSystem());
        Paper paper = choice("paper", form.paper(), Paper.values(), now.paper());
        if (!form.language().equals("en") && !form.language().equals("de")) {
            faults.rejectValue("language", "settings.choice");
        }
        if (!form.timeZone().equals(now.timeZone()) && !TimeZones.known(form.timeZone())) {
            faults.rejectValue("timeZone", "settings.choice");
        }
        int days = days();
        Map<Threshold, Double> moved = new EnumMap<>(Threshold.class);
        Map<BuildField, Double> figures = new TreeMap<>();
        for (SettingField field : SettingField.values()) {
            number(field).ifPresent(si -> {
                field.threshold().ifPresent(t -> moved.put(t, si));
                field.figure().ifPresent(f -> figures.put(f, si));
            });
        }
        String thresholds = faults.hasErrors() ? "" : thresholds(moved);
        return faults.hasErrors()
                ? Optional.empty()
                : Optional.of(new Shop(
                        now.id(),
                        form.name(),
                        units,
                        now.invented(),
                        form.language(),
                        paper,
                        form.timeZone(),
                        days,
                        thresholds,
                        text(figures),
                        form.version()));
    }

    private <E extends Enum<E>> E choice(String field, String sent, E[] all, E otherwise) {
        for (E e : all) {
            if (e.name().equals(sent)) {
                return e;
            }
        }
        faults.rejectValue(field, "settings.choice");
        return otherwise;
    }

    private int days() {
        int days = form.recheckDays().matches("\\d{1,4}") ? Integer.parseInt(form.recheckDays()) : 0;
        if (days < 1 || days > MOST_DAYS) {
            faults.rejectValue("recheckDays", "settings.days", new Object[] {form.recheckDays(), MOST_DAYS}, "");
        }
        return days;
    }

    /** Empty for nothing typed, which is the usual value. */
    private Optional<Double> number(SettingField field) {
        String typed = form.typed(field);
        UnitSystem system = now.unitSystem();
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> kept = field.threshold()
                .map(t -> now.thresholds().value(t))
                .or(() -> field.figure().map(now.figures()::get));
        for (Optional<Double> known : java.util.List.of(kept, field.threshold().map(Threshold::standard))) {
            if (known.isPresent() && field.show(known.get(), system).equals(typed)) {
                return known;
            }
        }
        try {
            double si = field.parse(typed, system);
            if (!field.allowed().contains(si)) {
                outside(field, field.allowed().min(), field.allowed().max());
            }
            return Optional.of(si);
        } catch (UnitException e) {
            faults.rejectValue(field.key(), e.messageKey(), e.messageArguments(), e.getMessage());
            return Optional.empty();
        }
    }

    private void outside(SettingField field, double least, double most) {
        UnitSystem system = now.unitSystem();
        Object[] bounds = {form.typed(field), field.show(least, system), field.show(most, system)};
        faults.rejectValue(field.key(), "settings.range", bounds, "");
    }

    private String thresholds(Map<Threshold, Double> moved) {
        try {
            return Thresholds.of(moved).moved();
        } catch (InputException e) {
            for (InputProblem p : e.problems()) {
                Threshold lower = Threshold.valueOf(p.field());
                Threshold upper =
                        lower == Threshold.GO_PROBABILITY ? Threshold.CONDITIONS_PROBABILITY : Threshold.GO_BOILING_K;
                outside(SettingField.of(lower), lower.allowed().min(), moved.getOrDefault(upper, upper.standard()));
            }
            return "";
        }
    }

    private static String text(Map<BuildField, Double> figures) {
        StringJoiner text = new StringJoiner(" ");
        figures.forEach((f, v) -> text.add(f.key() + "=" + v));
        return text.toString();
    }
}

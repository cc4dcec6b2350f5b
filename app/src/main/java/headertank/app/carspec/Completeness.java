package headertank.app.carspec;

import headertank.app.field.FieldText;
import headertank.app.unit.Dimension;
import headertank.app.unit.Units;
import headertank.calc.Rater;
import headertank.calc.carspec.Assumption;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.CoolantBase;
import headertank.calc.choice.FanDrive;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/**
 * How far a draft has come, and which value would be worth measuring next: for each number that is assumed or guessed, half
 * the difference of the coolant margin between one standard deviation above and one below, at the steady operating point
 * with the least margin. One value at a time, without what they do together (modelling choice: quick enough to follow
 * somebody who types; a check samples all of them at once).
 */
@Component
class Completeness {

    private static final int MOST = 3;
    /** Less is not worth a walk to the car [K]; modelling choice. */
    private static final double WORTH_K = 0.1;

    /**
     * @param stated essential fields that are filled in and understood
     * @param of essential fields that this car has a use for
     * @param next what to measure next, the worst first
     */
    record State(long stated, long of, List<Next> next) {
        /** Whether every essential field is stated. */
        public boolean done() {
            return stated == of;
        }
    }

    /**
     * @param id of the field on the page
     * @param guessed whether somebody guessed it; else it is assumed
     * @param spread one standard deviation of the margin that it causes, with its unit
     */
    record Next(String id, String label, boolean guessed, String spread) {}

    private record Effect(BuildField field, boolean guessed, double kelvins) {}

    private final Supplier<Rater> rater;
    private final FieldText text;

    Completeness(Supplier<Rater> rater, FieldText text) {
        this.rater = rater;
        this.text = text;
    }

    State of(SpecReader.Reading reading, Preview.Draft draft) {
        List<BuildField> needed = Arrays.stream(BuildField.values())
                .filter(f -> f.essential() && !withoutUse(f, reading.values().entries()))
                .toList();
        long stated =
                needed.stream().filter(reading.values().entries()::containsKey).count();
        return new State(stated, needed.size(), next(reading, draft));
    }

    /** A car without fans has no fan to measure, a fan on a clutch draws no current, water holds no glycol. */
    private static boolean withoutUse(BuildField field, Map<BuildField, Entry> entries) {
        return switch (field) {
            case FAN_COUNT, FAN_DIAMETER, FAN_FLOW, FAN_COVER -> is(entries, BuildField.FAN_DRIVE, FanDrive.NONE);
            case FAN_CURRENT ->
                is(entries, BuildField.FAN_DRIVE, FanDrive.NONE) || is(entries, BuildField.FAN_DRIVE, FanDrive.CLUTCH);
            case COOLANT_GLYCOL -> is(entries, BuildField.COOLANT_BASE, CoolantBase.WATER);
            default -> false;
        };
    }

    private static boolean is(Map<BuildField, Entry> entries, BuildField field, Enum<?> option) {
        return entries.get(field) instanceof Chosen chosen && chosen.is(option);
    }

    private List<Next> next(SpecReader.Reading reading, Preview.Draft draft) {
        Optional<Build> build = reading.draft();
        if (build.isEmpty() || draft.duties().isEmpty()) {
            return List.of();
        }
        Duty duty = rater.get().duties().get(reading.dutyIds().get(0));
        Optional<OperatingPoint> worst = duty.points().stream()
                .filter(p -> !p.engineOff())
                .min(Comparator.comparingDouble(p -> margin(build.get(), p)));
        if (worst.isEmpty()) {
            return List.of();
        }
        List<Effect> effects = new ArrayList<>();
        for (Assumption a : draft.assumed().values()) {
            if (!a.field().isChoice()) {
                effect(build.get(), worst.get(), a.field(), a.value(), a.spread(), false)
                        .ifPresent(effects::add);
            }
        }
        build.get().entries().forEach((field, entry) -> {
            if (entry instanceof Stated s && s.from() == Provenance.GUESSED) {
                Spread spread = s.spread() == null ? field.spread(s.from()) : s.spread();
                effect(build.get(), worst.get(), field, s.si(), spread, true).ifPresent(effects::add);
            }
        });
        return effects.stream()
                .sorted(Comparator.comparingDouble(Effect::kelvins).reversed())
                .limit(MOST)
                .map(this::shown)
                .toList();
    }

    private Optional<Effect> effect(
            Build build, OperatingPoint point, BuildField field, double value, Spread spread, boolean guessed) {
        double sigma = spread == null ? 0 : spread.sigmaAt(value);
        if (!(sigma > 0)) {
            return Optional.empty();
        }
        double more = margin(build, point, field, field.allowed().clamp(value + sigma));
        double less = margin(build, point, field, field.allowed().clamp(value - sigma));
        double kelvins = Math.abs(more - less) / 2;
        return Double.isFinite(kelvins) && kelvins >= WORTH_K
                ? Optional.of(new Effect(field, guessed, kelvins))
                : Optional.empty();
    }

    private double margin(Build build, OperatingPoint point, BuildField field, double value) {
        try {
            return margin(
                    build.change()
                            .set(field, new Stated(value, Provenance.MEASURED, null))
                            .build(),
                    point);
        } catch (InputException e) {
            return Double.NaN;
        }
    }

    private double margin(Build build, OperatingPoint point) {
        try {
            return rater.get().at(build, point).coolantMarginK();
        } catch (InputException | OutOfRangeException e) {
            return Double.NaN;
        }
    }

    private Next shown(Effect effect) {
        double tenths = Math.round(effect.kelvins() * 10) / 10.0;
        return new Next(
                effect.field().name(),
                text.label(effect.field()),
                effect.guessed(),
                Units.show(tenths, Dimension.TEMPERATURE_DIFFERENCE, text.system()));
    }
}

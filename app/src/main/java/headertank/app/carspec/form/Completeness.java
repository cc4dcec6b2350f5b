package headertank.app.carspec.form;

import headertank.app.field.FieldText;
import headertank.app.unit.Dimension;
import headertank.app.unit.Units;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.CoolantBase;
import headertank.calc.choice.FanDrive;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.result.WorthMeasuring;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** How far a draft has come, and which value would be worth measuring next, see {@link Rater#worthMeasuring}. */
@Component
class Completeness {

    private static final int MOST = 3;

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

    private final FieldText text;

    Completeness(FieldText text) {
        this.text = text;
    }

    /** @param rater with what is known of the car by its evidence */
    State of(SpecReader.Reading reading, Preview.Draft draft, Rater rater) {
        List<BuildField> needed = Arrays.stream(BuildField.values())
                .filter(f -> f.essential() && !withoutUse(f, reading.values().entries()))
                .toList();
        long stated =
                needed.stream().filter(reading.values().entries()::containsKey).count();
        return new State(stated, needed.size(), next(reading, draft, rater));
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

    private List<Next> next(SpecReader.Reading reading, Preview.Draft draft, Rater rater) {
        Optional<Build> build = reading.draft();
        if (build.isEmpty() || draft.duties().isEmpty()) {
            return List.of();
        }
        Duty duty = rater.duties().get(reading.dutyIds().get(0));
        return rater.worthMeasuring(build.get(), duty).stream()
                .limit(MOST)
                .map(this::shown)
                .toList();
    }

    private Next shown(WorthMeasuring effect) {
        double tenths = Math.round(effect.marginK() * 10) / 10.0;
        return new Next(
                effect.field().name(),
                text.label(effect.field()),
                effect.guessed(),
                Units.show(tenths, Dimension.TEMPERATURE_DIFFERENCE, text.system()));
    }
}

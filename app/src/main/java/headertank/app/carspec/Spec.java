package headertank.app.carspec;

import headertank.app.field.FieldValues;
import headertank.app.part.PartKind;
import headertank.app.part.PartRef;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What one revision holds.
 *
 * @param build what is known of the car
 * @param dutyIds what the car is meant for, at least one, sorted
 * @param typed numbers as somebody typed them, with their unit; only of fields that the build states
 * @param parts parts of the catalogue that are on the car; they are kept beside the stored text, not in it
 */
public record Spec(Build build, List<String> dutyIds, Map<BuildField, String> typed, Map<PartKind, PartRef> parts) {

    public Spec {
        dutyIds = dutyIds.stream().distinct().sorted().toList();
        if (dutyIds.isEmpty()) {
            throw new IllegalArgumentException("a spec names at least one duty");
        }
        Map<BuildField, String> copy = new EnumMap<>(BuildField.class);
        copy.putAll(typed);
        copy.keySet().removeIf(f -> f.isChoice() || !build.entries().containsKey(f));
        typed = Collections.unmodifiableMap(copy);
        Map<PartKind, PartRef> slots = new EnumMap<>(PartKind.class);
        slots.putAll(parts);
        parts = Collections.unmodifiableMap(slots);
    }

    public Spec(Build build, List<String> dutyIds, Map<BuildField, String> typed) {
        this(build, dutyIds, typed, Map.of());
    }

    public Spec(CarClass carClass, FieldValues values, List<String> dutyIds) {
        this(new Build(carClass, values.entries()), dutyIds, values.typed());
    }

    public Spec(Build build, List<String> dutyIds) {
        this(build, dutyIds, Map.of());
    }

    /** What is known of the car's fields, and how it was typed. */
    public FieldValues values() {
        return new FieldValues(build.entries(), typed);
    }

    /** The same with these parts on the car. */
    public Spec withParts(Map<PartKind, PartRef> others) {
        return new Spec(build, dutyIds, typed, others);
    }
}

package headertank.app.field;

import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Entry;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What is known of some fields, of a car or of a part.
 *
 * @param entries values in SI with their provenance; what is not known is absent
 * @param typed numbers as somebody typed them, with their unit
 */
public record FieldValues(Map<BuildField, Entry> entries, Map<BuildField, String> typed) {

    public FieldValues {
        Map<BuildField, Entry> copy = new EnumMap<>(BuildField.class);
        copy.putAll(entries);
        Map<BuildField, String> texts = new EnumMap<>(BuildField.class);
        texts.putAll(typed);
        texts.keySet().removeIf(f -> f.isChoice() || !copy.containsKey(f));
        entries = Collections.unmodifiableMap(copy);
        typed = Collections.unmodifiableMap(texts);
    }

    public static FieldValues none() {
        return new FieldValues(Map.of(), Map.of());
    }

    /** Fields whose value on a car is another one, or unknown there. Where a value comes from does not matter. */
    public List<BuildField> differing(Map<BuildField, Entry> onCar) {
        return entries.entrySet().stream()
                .filter(e -> !Entry.sameValue(e.getValue(), onCar.get(e.getKey())))
                .map(Map.Entry::getKey)
                .toList();
    }
}

package headertank.app.part;

import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Stated;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What the catalogue says of a part.
 *
 * @param entries values in SI with their provenance; what is not known is absent
 * @param typed numbers as somebody typed them, with their unit
 */
public record PartValues(Map<BuildField, Entry> entries, Map<BuildField, String> typed) {

    /** Numbers that differ by less than this share of themselves are the same: only the last digits of a conversion differ. */
    private static final double SAME = 1e-9;

    public PartValues {
        Map<BuildField, Entry> copy = new EnumMap<>(BuildField.class);
        copy.putAll(entries);
        Map<BuildField, String> texts = new EnumMap<>(BuildField.class);
        texts.putAll(typed);
        texts.keySet().removeIf(f -> f.isChoice() || !copy.containsKey(f));
        entries = Collections.unmodifiableMap(copy);
        typed = Collections.unmodifiableMap(texts);
    }

    public static PartValues none() {
        return new PartValues(Map.of(), Map.of());
    }

    /** Fields of this part whose value on the car is another one, or unknown there. Where a value comes from does not matter. */
    public List<BuildField> differing(Map<BuildField, Entry> onCar) {
        return entries.entrySet().stream()
                .filter(e -> !same(e.getValue(), onCar.get(e.getKey())))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Whether two entries state the same value. */
    static boolean same(Entry a, Entry b) {
        if (a instanceof Stated one && b instanceof Stated other) {
            double larger = Math.max(Math.abs(one.si()), Math.abs(other.si()));
            return Math.abs(one.si() - other.si()) <= SAME * larger;
        }
        return a instanceof Chosen one
                && b instanceof Chosen other
                && one.token().equals(other.token());
    }
}

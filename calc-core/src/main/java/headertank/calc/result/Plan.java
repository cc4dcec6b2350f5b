package headertank.calc.result;

import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Message;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What an {@link Improvement} asks of a build, so that somebody can try it.
 *
 * @param label what to change
 * @param entries fields that change, with the values that they get; nobody has measured these, so they count as guessed
 */
public record Plan(Message label, Map<BuildField, Entry> entries) {

    public Plan {
        Map<BuildField, Entry> copy = new EnumMap<>(BuildField.class);
        copy.putAll(entries);
        entries = Collections.unmodifiableMap(copy);
    }
}

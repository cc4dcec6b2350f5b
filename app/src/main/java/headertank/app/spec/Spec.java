package headertank.app.spec;

import headertank.calc.build.Build;
import headertank.calc.build.BuildField;
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
 */
public record Spec(Build build, List<String> dutyIds, Map<BuildField, String> typed) {

    public Spec {
        dutyIds = dutyIds.stream().distinct().sorted().toList();
        if (dutyIds.isEmpty()) {
            throw new IllegalArgumentException("a spec names at least one duty");
        }
        Map<BuildField, String> copy = new EnumMap<>(BuildField.class);
        copy.putAll(typed);
        copy.keySet().removeIf(f -> f.isChoice() || !build.entries().containsKey(f));
        typed = Collections.unmodifiableMap(copy);
    }

    public Spec(Build build, List<String> dutyIds) {
        this(build, dutyIds, Map.of());
    }
}

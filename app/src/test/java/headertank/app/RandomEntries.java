package headertank.app;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.InputProblem;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Makes a car of values that were drawn at random, each for itself. */
public final class RandomEntries {

    private RandomEntries() {}

    /** The entries without those that contradict another. */
    public static Map<BuildField, Entry> fitting(Map<BuildField, Entry> drawn) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        entries.putAll(drawn);
        List<InputProblem> problems = Build.problems(entries);
        while (!problems.isEmpty()) {
            problems.stream()
                    .flatMap(p -> BuildField.ofKey(p.field()).stream())
                    .flatMap(f -> f.name().startsWith("CONTROL_ROW") ? rows() : Stream.of(f))
                    .forEach(entries::remove);
            problems = Build.problems(entries);
        }
        return entries;
    }

    private static Stream<BuildField> rows() {
        return Arrays.stream(BuildField.values()).filter(f -> f.name().startsWith("CONTROL_ROW"));
    }
}

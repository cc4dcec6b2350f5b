package headertank.calc.verdict;

import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.InputText;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.SiFigure;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;

/** A value for each {@link Threshold}. Immutable. */
public final class Thresholds {

    /** The usual values. */
    public static final Thresholds STANDARD = of(Map.of());

    private final Map<Threshold, Double> values;

    private Thresholds(Map<Threshold, Double> values) {
        this.values = values;
    }

    /**
     * @param moved those that differ from the usual value
     * @throws InputException with every value that is out of its range, and every pair that contradicts itself
     */
    public static Thresholds of(Map<Threshold, Double> moved) {
        Map<Threshold, Double> values = new EnumMap<>(Threshold.class);
        List<InputProblem> problems = new ArrayList<>();
        for (Threshold t : Threshold.values()) {
            double value = moved.getOrDefault(t, t.standard());
            if (!t.allowed().contains(value)) {
                problems.add(problem(t, value, t.allowed(), InputProblem.Code.OUT_OF_RANGE));
            }
            values.put(t, value);
        }
        inOrder(values, Threshold.GO_PROBABILITY, Threshold.CONDITIONS_PROBABILITY, problems);
        inOrder(values, Threshold.LEAST_BOILING_K, Threshold.GO_BOILING_K, problems);
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return new Thresholds(values);
    }

    private static void inOrder(
            Map<Threshold, Double> values, Threshold lower, Threshold upper, List<InputProblem> problems) {
        if (problems.isEmpty() && values.get(lower) > values.get(upper)) {
            Range allowed = Range.of(lower.allowed().min(), values.get(upper));
            problems.add(problem(lower, values.get(lower), allowed, InputProblem.Code.CONTRADICTION));
        }
    }

    private static InputProblem problem(Threshold t, double value, Range allowed, InputProblem.Code code) {
        return InputProblem.of(
                t.name(),
                new SiFigure(value, t.kind()),
                InputText.RANGE.with(new SiFigure(allowed.min(), t.kind()), new SiFigure(allowed.max(), t.kind())),
                code);
    }

    /** @return the value [SI] */
    public double value(Threshold threshold) {
        return values.get(threshold);
    }

    /** @return name and value of those that were moved, e.g. {@code GO_PROBABILITY=0.02 GO_MARGIN_K=12.0}; empty for none */
    public String moved() {
        StringJoiner text = new StringJoiner(" ");
        values.forEach((t, v) -> {
            if (v != t.standard()) {
                text.add(t.name() + "=" + v);
            }
        });
        return text.toString();
    }

    /**
     * @param moved what {@link #moved} wrote
     * @throws IllegalArgumentException when it is no such text, or a value is no longer accepted
     */
    public static Thresholds read(String moved) {
        Map<Threshold, Double> values = new EnumMap<>(Threshold.class);
        for (String item : moved.isBlank() ? new String[0] : moved.strip().split(" ")) {
            String[] parts = item.split("=", 2);
            values.put(Threshold.valueOf(parts[0]), Double.valueOf(parts[1]));
        }
        return of(values);
    }
}

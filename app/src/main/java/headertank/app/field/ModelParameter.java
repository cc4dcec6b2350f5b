package headertank.app.field;

import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Range;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What a parameter of a model of calc-core is a figure of: its name ends with its SI unit. */
final class ModelParameter {

    /** Nothing that a car holds is so cold: a range that begins above it is one of temperatures, else of differences [K]. */
    private static final double COLDEST_K = 150;

    /** By the end of a name, longer ends first. */
    private static final Map<String, FigureKind> ENDS = new LinkedHashMap<>();

    static {
        ENDS.put("M3PerS", FigureKind.AIR_FLOW);
        ENDS.put("M2KPerW", FigureKind.FOULING);
        ENDS.put("WPerK", FigureKind.CONDUCTANCE);
        ENDS.put("MPerS", FigureKind.SPEED);
        ENDS.put("KgPerS", FigureKind.RATIO);
        ENDS.put("PerMK", FigureKind.RATIO);
        ENDS.put("PerM3", FigureKind.RATIO);
        ENDS.put("M2PerS", FigureKind.RATIO);
        ENDS.put("PerS", FigureKind.ROTATION);
        ENDS.put("Rad", FigureKind.ANGLE);
        ENDS.put("M2", FigureKind.AREA);
        ENDS.put("M3", FigureKind.VOLUME);
        ENDS.put("Pa", FigureKind.PRESSURE_ABSOLUTE);
        ENDS.put("Kg", FigureKind.MASS);
        ENDS.put("M", FigureKind.LENGTH);
        ENDS.put("W", FigureKind.POWER);
        ENDS.put("A", FigureKind.CURRENT);
        ENDS.put("V", FigureKind.VOLTAGE);
        ENDS.put("S", FigureKind.TIME);
    }

    private ModelParameter() {}

    /** The field of a car that the parameter is, if it is one. */
    static Optional<BuildField> field(String name) {
        return Arrays.stream(BuildField.values())
                .filter(f -> !f.isChoice())
                .filter(f -> f.key().equals(name) || f.key().endsWith("." + name))
                .findFirst();
    }

    static FigureKind kind(String name, Range allowed) {
        return field(name).map(BuildField::kind).orElseGet(() -> byEnd(name, allowed));
    }

    private static FigureKind byEnd(String name, Range allowed) {
        if (name.endsWith("K") && !name.endsWith("PerK") && !name.endsWith("PerMK")) {
            return allowed.min() > COLDEST_K ? FigureKind.TEMPERATURE : FigureKind.TEMPERATURE_DIFFERENCE;
        }
        return ENDS.entrySet().stream()
                .filter(e -> name.endsWith(e.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(FigureKind.RATIO);
    }
}

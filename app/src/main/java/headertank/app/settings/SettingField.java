package headertank.app.settings;

import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Range;
import headertank.calc.verdict.Threshold;
import java.util.Arrays;
import java.util.Optional;

/** A number among the settings: a field of a car for which the shop has its own figure, or a threshold of the verdict. */
enum SettingField {
    COOLANT_LIMIT("coolantLimit", BuildField.COOLANT_LIMIT, null, Dimension.TEMPERATURE),
    OIL_LIMIT("oilLimit", BuildField.OIL_LIMIT, null, Dimension.TEMPERATURE),
    GO_PROBABILITY("goProbability", null, Threshold.GO_PROBABILITY, Dimension.FRACTION),
    CONDITIONS_PROBABILITY("conditionsProbability", null, Threshold.CONDITIONS_PROBABILITY, Dimension.FRACTION),
    GO_MARGIN("goMargin", null, Threshold.GO_MARGIN_K, Dimension.TEMPERATURE_DIFFERENCE),
    GO_BOILING("goBoiling", null, Threshold.GO_BOILING_K, Dimension.TEMPERATURE_DIFFERENCE),
    LEAST_BOILING("leastBoiling", null, Threshold.LEAST_BOILING_K, Dimension.TEMPERATURE_DIFFERENCE),
    OIL_OVER_CAUTION("oilOverCaution", null, Threshold.OIL_OVER_CAUTION_K, Dimension.TEMPERATURE_DIFFERENCE),
    GO_DEFICIT("goDeficit", null, Threshold.GO_DEFICIT_A, Dimension.CURRENT);

    private final String key;
    private final BuildField figure;
    private final Threshold threshold;
    private final Dimension dimension;

    SettingField(String key, BuildField figure, Threshold threshold, Dimension dimension) {
        this.key = key;
        this.figure = figure;
        this.threshold = threshold;
        this.dimension = dimension;
    }

    static SettingField of(BuildField field) {
        return Arrays.stream(values())
                .filter(f -> f.figure == field)
                .findFirst()
                .orElseThrow();
    }

    static SettingField of(Threshold threshold) {
        return Arrays.stream(values())
                .filter(f -> f.threshold == threshold)
                .findFirst()
                .orElseThrow();
    }

    /** Name of the field in the form. */
    String key() {
        return key;
    }

    Optional<BuildField> figure() {
        return Optional.ofNullable(figure);
    }

    Optional<Threshold> threshold() {
        return Optional.ofNullable(threshold);
    }

    /** What the owner may choose [SI]. */
    Range allowed() {
        return threshold == null ? figure.allowed() : threshold.allowed();
    }

    String show(double si, UnitSystem system) {
        return Units.show(si, dimension, system);
    }

    /** @throws headertank.app.unit.UnitException when the text is no such quantity */
    double parse(String text, UnitSystem system) {
        return Units.parse(text, dimension, system);
    }
}

package headertank.app.settings;

import headertank.app.language.FigureUnit;
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
    COOLANT_LIMIT("coolantLimit", BuildField.COOLANT_LIMIT),
    OIL_LIMIT("oilLimit", BuildField.OIL_LIMIT),
    GO_PROBABILITY("goProbability", Threshold.GO_PROBABILITY),
    CONDITIONS_PROBABILITY("conditionsProbability", Threshold.CONDITIONS_PROBABILITY),
    GO_MARGIN("goMargin", Threshold.GO_MARGIN_K),
    GO_BOILING("goBoiling", Threshold.GO_BOILING_K),
    LEAST_BOILING("leastBoiling", Threshold.LEAST_BOILING_K),
    OIL_OVER_CAUTION("oilOverCaution", Threshold.OIL_OVER_CAUTION_K),
    GO_DEFICIT("goDeficit", Threshold.GO_DEFICIT_A);

    private final String key;
    private final BuildField figure;
    private final Threshold threshold;
    private final Dimension dimension;

    SettingField(String key, BuildField figure) {
        this.key = key;
        this.figure = figure;
        this.threshold = null;
        this.dimension = FigureUnit.of(figure.kind());
    }

    SettingField(String key, Threshold threshold) {
        this.key = key;
        this.figure = null;
        this.threshold = threshold;
        this.dimension = FigureUnit.of(threshold.kind());
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

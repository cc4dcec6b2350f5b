package headertank.calc.rating;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.ControlTable;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanControlKind;
import headertank.calc.control.FanControlSpec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The control of a car's electric fans. */
public final class FanControlOf {

    private static final double LEAST_ROW_STEP_K = 0.1;

    private FanControlOf() {}

    /**
     * @return the control that the resolved values describe. Values that contradict each other are refused where a build is
     *     entered; a comparison of two builds and a sampled car may still mix them: then a low step is cut to the full one, and
     *     rows of a table are sorted and made to rise
     */
    public static FanControlSpec resolved(Resolved r) {
        return of(r.option(BuildField.CONTROL_KIND, FanControlKind.class), r::value);
    }

    /** @return the same for values from elsewhere [SI], NaN where there is none */
    public static FanControlSpec of(FanControlKind kind, ToDoubleFunction<BuildField> r) {
        double set = r.applyAsDouble(BuildField.CONTROL_SET);
        double band = r.applyAsDouble(BuildField.CONTROL_BAND);
        return switch (kind) {
            case TWO_STEP ->
                new FanControlSpec.TwoStep(
                        Math.min(set, known(r, BuildField.CONTROL_LOW_SET, set - FanControlSpec.TwoStep.USUAL_STEP_K)),
                        set,
                        band,
                        known(r, BuildField.CONTROL_LOW_DUTY, FanControlSpec.TwoStep.USUAL_LOW_DUTY));
            case RAMP ->
                new FanControlSpec.Ramp(set, band, r.applyAsDouble(BuildField.CONTROL_MIN_DUTY), softStartS(r));
            case TABLE -> new FanControlSpec.Table(rows(r, set), softStartS(r));
            case ALWAYS_ON -> new FanControlSpec.AlwaysOn();
            case SWITCH -> new FanControlSpec.Switch(set, band);
        };
    }

    private static double softStartS(ToDoubleFunction<BuildField> r) {
        return known(r, BuildField.CONTROL_SOFT_START, FanControlSpec.USUAL_SOFT_START_S);
    }

    private static double known(ToDoubleFunction<BuildField> r, BuildField field, double otherwise) {
        double value = r.applyAsDouble(field);
        return Double.isNaN(value) ? otherwise : value;
    }

    private static List<FanControlSpec.Row> rows(ToDoubleFunction<BuildField> r, double set) {
        List<FanControlSpec.Row> stated = ControlTable.ROWS.stream()
                .map(row -> new double[] {r.applyAsDouble(row.temperature()), r.applyAsDouble(row.duty())})
                .filter(row -> !Double.isNaN(row[0]) && !Double.isNaN(row[1]))
                .map(row -> new FanControlSpec.Row(row[0], row[1]))
                .sorted(Comparator.comparingDouble(FanControlSpec.Row::sensedK))
                .toList();
        List<FanControlSpec.Row> rising = new ArrayList<>();
        for (FanControlSpec.Row row : stated) {
            FanControlSpec.Row last = rising.isEmpty() ? null : rising.get(rising.size() - 1);
            if (last == null) {
                rising.add(row);
            } else if (row.sensedK() >= last.sensedK() + LEAST_ROW_STEP_K) {
                rising.add(new FanControlSpec.Row(row.sensedK(), Math.max(last.duty(), row.duty())));
            }
        }
        return rising.size() >= 2
                ? rising
                : List.of(
                        new FanControlSpec.Row(set - FanControlSpec.Ramp.USUAL_BAND_K, 0),
                        new FanControlSpec.Row(set, 1));
    }
}

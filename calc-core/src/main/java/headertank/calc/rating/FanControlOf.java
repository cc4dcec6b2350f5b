package headertank.calc.rating;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.ControlTable;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanControlKind;
import headertank.calc.control.FanControlSpec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
        double set = r.value(BuildField.CONTROL_SET);
        double band = r.value(BuildField.CONTROL_BAND);
        return switch (r.option(BuildField.CONTROL_KIND, FanControlKind.class)) {
            case TWO_STEP ->
                new FanControlSpec.TwoStep(
                        Math.min(set, known(r, BuildField.CONTROL_LOW_SET, set - FanControlSpec.TwoStep.USUAL_STEP_K)),
                        set,
                        band,
                        known(r, BuildField.CONTROL_LOW_DUTY, FanControlSpec.TwoStep.USUAL_LOW_DUTY));
            case RAMP -> new FanControlSpec.Ramp(set, band, r.value(BuildField.CONTROL_MIN_DUTY), softStartS(r));
            case TABLE -> new FanControlSpec.Table(rows(r, set), softStartS(r));
            case ALWAYS_ON -> new FanControlSpec.AlwaysOn();
            case SWITCH -> new FanControlSpec.Switch(set, band);
        };
    }

    private static double softStartS(Resolved r) {
        return known(r, BuildField.CONTROL_SOFT_START, FanControlSpec.USUAL_SOFT_START_S);
    }

    private static double known(Resolved r, BuildField field, double otherwise) {
        return r.has(field) ? r.value(field) : otherwise;
    }

    private static List<FanControlSpec.Row> rows(Resolved r, double set) {
        List<FanControlSpec.Row> stated = ControlTable.ROWS.stream()
                .filter(row -> r.has(row.temperature()) && r.has(row.duty()))
                .map(row -> new FanControlSpec.Row(r.value(row.temperature()), r.value(row.duty())))
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

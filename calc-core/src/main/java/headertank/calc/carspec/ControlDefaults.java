package headertank.calc.carspec;

import static headertank.calc.carspec.ClassDefaults.EXACT;
import static headertank.calc.carspec.ClassDefaults.choice;
import static headertank.calc.carspec.ClassDefaults.number;

import headertank.calc.control.FanControlSpec;
import headertank.calc.quantity.Spread;
import java.util.Optional;

/** What stands in for what nobody stated of the fan control; all common practice, no source. */
final class ControlDefaults {

    private static final Spread SET_POINT = Spread.absolute(2);
    private static final String AS_RAMP = "a ramp up to the set point";

    private final double usualSetK;
    private final double[] values;
    private final String[] tokens;
    private final boolean tableStated;
    private final String likelyKind;

    /**
     * @param usualSetK set point of the class of car [K]
     * @param values what is stated, by ordinal; filled by the caller as defaults are taken
     * @param tokens likewise
     */
    ControlDefaults(double usualSetK, double[] values, String[] tokens) {
        this.usualSetK = usualSetK;
        this.values = values;
        this.tokens = tokens;
        this.tableStated = ControlTable.ROWS.stream().anyMatch(r -> has(r.temperature()) || has(r.duty()));
        boolean lowStepStated = has(BuildField.CONTROL_LOW_SET) || has(BuildField.CONTROL_LOW_DUTY);
        this.likelyKind = tableStated ? "TABLE" : lowStepStated ? "TWO_STEP" : "SWITCH";
    }

    Optional<Assumption> assume(BuildField f) {
        double set = value(BuildField.CONTROL_SET);
        return switch (f) {
            case CONTROL_KIND ->
                choice(
                        f,
                        likelyKind,
                        likelyKind.equals("SWITCH")
                                ? "the harder case for the alternator"
                                : "from what else is known of it");
            case CONTROL_SET -> number(f, setK(), SET_POINT, "typical of the class");
            case CONTROL_BAND ->
                number(
                        f,
                        is("RAMP") ? FanControlSpec.Ramp.USUAL_BAND_K : FanControlSpec.Switch.USUAL_HYSTERESIS_K,
                        EXACT,
                        "typical of such a control");
            case CONTROL_MIN_DUTY -> number(f, FanControlSpec.Ramp.USUAL_MINIMUM_DUTY, EXACT, "typical of a ramp");
            case CONTROL_LOW_SET ->
                only(
                        "TWO_STEP",
                        number(f, set - FanControlSpec.TwoStep.USUAL_STEP_K, SET_POINT, "typical of two steps"));
            case CONTROL_LOW_DUTY ->
                only("TWO_STEP", number(f, FanControlSpec.TwoStep.USUAL_LOW_DUTY, EXACT, "typical of two steps"));
            case CONTROL_SOFT_START ->
                is("RAMP") || is("TABLE")
                        ? number(f, FanControlSpec.USUAL_SOFT_START_S, EXACT, "typical of a controller")
                        : Optional.empty();
            case CONTROL_ROW_1_K -> usualTable(number(f, set - FanControlSpec.Ramp.USUAL_BAND_K, EXACT, AS_RAMP));
            case CONTROL_ROW_1_DUTY -> usualTable(number(f, 0, EXACT, AS_RAMP));
            case CONTROL_ROW_2_K -> usualTable(number(f, set, EXACT, AS_RAMP));
            case CONTROL_ROW_2_DUTY -> usualTable(number(f, 1, EXACT, AS_RAMP));
            default -> Optional.empty();
        };
    }

    private double setK() {
        return is("TWO_STEP") && has(BuildField.CONTROL_LOW_SET)
                ? Math.max(usualSetK, value(BuildField.CONTROL_LOW_SET) + FanControlSpec.TwoStep.USUAL_STEP_K)
                : usualSetK;
    }

    private Optional<Assumption> usualTable(Optional<Assumption> row) {
        return tableStated ? Optional.empty() : only("TABLE", row);
    }

    private Optional<Assumption> only(String kind, Optional<Assumption> assumed) {
        return is(kind) ? assumed : Optional.empty();
    }

    private boolean is(String kind) {
        return tokens[BuildField.CONTROL_KIND.ordinal()].equals(kind);
    }

    private boolean has(BuildField f) {
        return !Double.isNaN(value(f));
    }

    private double value(BuildField f) {
        return values[f.ordinal()];
    }
}

package headertank.calc.carspec;

import static headertank.calc.carspec.BuildField.*;
import static headertank.calc.carspec.ClassDefaults.always;
import static headertank.calc.carspec.ClassDefaults.celsius;
import static headertank.calc.carspec.Default.choice;
import static headertank.calc.carspec.Default.number;

import headertank.calc.choice.FanControlKind;
import headertank.calc.control.FanControlSpec;
import headertank.calc.quantity.Spread;
import java.util.List;

/** The rows of {@link ClassDefaults} for what nobody stated of the fan control; all common practice, no source. */
final class ControlDefaults {

    private static final Spread EXACT = Spread.relative(0);
    private static final Spread SET_POINT = Spread.absolute(2);
    private static final AssumptionText OF_TWO_STEPS = AssumptionText.TYPICAL_OF_TWO_STEPS;
    private static final AssumptionText AS_RAMP = AssumptionText.RAMP_TO_SET_POINT;

    static final List<Default> ROWS = List.of(
            choice(CONTROL_KIND, ControlDefaults::likelyKind, AssumptionText.FROM_THE_REST)
                    .why(c -> likelyKind(c) == FanControlKind.SWITCH
                            ? AssumptionText.HARDER_FOR_ALTERNATOR
                            : AssumptionText.FROM_THE_REST),
            number(CONTROL_SET, ControlDefaults::setK, SET_POINT, AssumptionText.TYPICAL_OF_THE_CLASS),
            number(
                    CONTROL_BAND,
                    c -> is(c, FanControlKind.RAMP)
                            ? FanControlSpec.Ramp.USUAL_BAND_K
                            : FanControlSpec.Switch.USUAL_HYSTERESIS_K,
                    EXACT,
                    AssumptionText.TYPICAL_OF_CONTROL),
            number(
                    CONTROL_MIN_DUTY,
                    always(FanControlSpec.Ramp.USUAL_MINIMUM_DUTY),
                    EXACT,
                    AssumptionText.TYPICAL_OF_A_RAMP),
            number(
                            CONTROL_LOW_SET,
                            c -> c.value(CONTROL_SET) - FanControlSpec.TwoStep.USUAL_STEP_K,
                            SET_POINT,
                            OF_TWO_STEPS)
                    .onlyIf(c -> is(c, FanControlKind.TWO_STEP)),
            number(CONTROL_LOW_DUTY, always(FanControlSpec.TwoStep.USUAL_LOW_DUTY), EXACT, OF_TWO_STEPS)
                    .onlyIf(c -> is(c, FanControlKind.TWO_STEP)),
            number(
                            CONTROL_SOFT_START,
                            always(FanControlSpec.USUAL_SOFT_START_S),
                            EXACT,
                            AssumptionText.TYPICAL_OF_A_CONTROLLER)
                    .onlyIf(c -> is(c, FanControlKind.RAMP) || is(c, FanControlKind.TABLE)),
            number(CONTROL_ROW_1_K, c -> c.value(CONTROL_SET) - FanControlSpec.Ramp.USUAL_BAND_K, EXACT, AS_RAMP)
                    .onlyIf(ControlDefaults::needsTable),
            number(CONTROL_ROW_1_DUTY, always(0), EXACT, AS_RAMP).onlyIf(ControlDefaults::needsTable),
            number(CONTROL_ROW_2_K, c -> c.value(CONTROL_SET), EXACT, AS_RAMP).onlyIf(ControlDefaults::needsTable),
            number(CONTROL_ROW_2_DUTY, always(1), EXACT, AS_RAMP).onlyIf(ControlDefaults::needsTable));

    private ControlDefaults() {}

    private static FanControlKind likelyKind(Known c) {
        if (tableIsStated(c)) {
            return FanControlKind.TABLE;
        }
        return c.isStated(CONTROL_LOW_SET) || c.isStated(CONTROL_LOW_DUTY)
                ? FanControlKind.TWO_STEP
                : FanControlKind.SWITCH;
    }

    private static boolean tableIsStated(Known c) {
        return ControlTable.ROWS.stream().anyMatch(r -> c.isStated(r.temperature()) || c.isStated(r.duty()));
    }

    private static boolean needsTable(Known c) {
        return is(c, FanControlKind.TABLE) && !tableIsStated(c);
    }

    private static double setK(Known c) {
        double usual = celsius(92, 100, 90, 90).from(c);
        return is(c, FanControlKind.TWO_STEP) && c.has(CONTROL_LOW_SET)
                ? Math.max(usual, c.value(CONTROL_LOW_SET) + FanControlSpec.TwoStep.USUAL_STEP_K)
                : usual;
    }

    private static boolean is(Known c, FanControlKind kind) {
        return c.is(CONTROL_KIND, kind);
    }
}

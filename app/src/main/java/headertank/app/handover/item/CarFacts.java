package headertank.app.handover.item;

import headertank.app.check.stored.CheckInput;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.FanDrive;
import java.util.Arrays;

/** What a check was made with, defaults included. */
record CarFacts(CheckInput input) {

    /** A pressure that is worth a test with a hand pump [Pa]; modelling choice. */
    private static final double LEAST_CAP_PA = 1e4;

    boolean is(BuildField field, Enum<?>... options) {
        return Arrays.stream(options).anyMatch(o -> token(field).equals(field.token(o)));
    }

    String token(BuildField field) {
        CheckInput.Value value = input.fields().get(field.key());
        return value == null ? "" : value.token();
    }

    /** As somebody stated it; what stands in for it when nobody did; NaN when there is neither [SI]. */
    double value(BuildField field) {
        CheckInput.Value value = input.fields().get(field.key());
        if (value == null) {
            return Double.NaN;
        }
        return Double.isNaN(value.stated()) ? value.value() : value.stated();
    }

    /** Whether nobody has stated it. */
    boolean assumed(BuildField field) {
        CheckInput.Value value = input.fields().get(field.key());
        return value == null || value.from().equals("ASSUMED");
    }

    boolean electricFans() {
        return is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC);
    }

    /** Whether a temperature decides when the fans start. */
    boolean fansWait() {
        return electricFans() && !is(BuildField.CONTROL_KIND, FanControlKind.ALWAYS_ON);
    }

    /** What the sensor of the fans feels when they start [K]; NaN when no temperature decides it. */
    double fansStartK() {
        FanControlKind kind = FanControlKind.valueOf(token(BuildField.CONTROL_KIND));
        return Rater.fansStartK(kind, this::value).orElse(Double.NaN);
    }

    boolean hasCap() {
        return value(BuildField.CAP_PRESSURE) >= LEAST_CAP_PA;
    }
}

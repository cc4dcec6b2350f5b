package headertank.app.drawing;

import headertank.app.check.stored.CheckInput;
import headertank.app.unit.Dimension;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.FanMounting;
import headertank.calc.choice.OilCooling;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.Arrays;

/** The parts of a checked car, as they went into its check, defaults included. */
final class CarParts {

    private static final String ASSUMED = "ASSUMED";

    private final CheckInput input;

    CarParts(CheckInput input) {
        this.input = input;
    }

    /** The number that the check used [SI]; NaN when there is none. */
    double number(BuildField field) {
        CheckInput.Value v = input.fields().get(field.key());
        return v == null ? Double.NaN : v.value();
    }

    int count(BuildField field) {
        double n = number(field);
        return Double.isNaN(n) ? 0 : (int) Math.rint(n);
    }

    /** The option that the check used; empty when there is none. */
    String token(BuildField field) {
        CheckInput.Value v = input.fields().get(field.key());
        return v == null ? "" : v.token();
    }

    /** The same as a constant of its kind. */
    <E extends Enum<E>> E option(BuildField field, Class<E> type) {
        return Enum.valueOf(type, token(field));
    }

    boolean is(BuildField field, Enum<?> option) {
        return token(field).equals(field.token(option));
    }

    /** Whether nobody stated one of these. */
    boolean assumed(BuildField... fields) {
        return Arrays.stream(fields).anyMatch(f -> {
            CheckInput.Value v = input.fields().get(f.key());
            return v == null || v.from().equals(ASSUMED);
        });
    }

    /** A text with the mark for what was assumed, where one of these was. */
    String marked(Words words, String text, BuildField... fields) {
        return assumed(fields) ? words.say("assumed", text) : text;
    }

    String shown(Words words, BuildField field, Dimension dimension) {
        return marked(words, words.show(number(field), dimension), field);
    }

    boolean hasFans() {
        return !is(BuildField.FAN_DRIVE, FanDrive.NONE);
    }

    boolean pushing() {
        return hasFans() && is(BuildField.FAN_MOUNTING, FanMounting.PUSHING);
    }

    boolean oilCoolerInAir() {
        return is(BuildField.OIL_COOLER, OilCooling.AIR) || is(BuildField.OIL_COOLER, OilCooling.BOTH);
    }

    boolean oilCoolerInCoolant() {
        return is(BuildField.OIL_COOLER, OilCooling.COOLANT) || is(BuildField.OIL_COOLER, OilCooling.BOTH);
    }

    /** The same car for calc-core, with exactly the values that the check used. */
    Resolved resolved(Rater rater) {
        Build.Builder build = Build.forCar(CarClass.valueOf(input.carClass()));
        for (BuildField f : BuildField.values()) {
            CheckInput.Value v = input.fields().get(f.key());
            if (v == null || v.from().equals(ASSUMED)) {
                continue;
            }
            Provenance from = Provenance.valueOf(v.from());
            build.set(f, f.isChoice() ? new Chosen(v.token(), from) : new Stated(v.stated(), from, null));
        }
        Resolved resolved = rater.resolve(build.build());
        double[] values = resolved.values();
        for (BuildField f : BuildField.values()) {
            values[f.ordinal()] = number(f);
        }
        resolved = resolved.withValues(values);
        for (BuildField f : BuildField.values()) {
            if (f.isChoice() && !token(f).isEmpty()) {
                resolved = resolved.withToken(f, token(f));
            }
        }
        return resolved;
    }
}

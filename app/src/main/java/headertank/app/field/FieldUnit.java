package headertank.app.field;

import headertank.app.unit.Dimension;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.carspec.BuildField;
import java.util.regex.Pattern;

/** Which kind of quantity each numeric field is: the same pascal is a gauge pressure on a cap and a difference at a fan. */
public final class FieldUnit {

    private FieldUnit() {}

    public static Dimension of(BuildField field) {
        return switch (field) {
            case ALTITUDE -> Dimension.ALTITUDE;
            case FAN_FLOW -> Dimension.AIR_FLOW;
            case PUMP_FLOW -> Dimension.LIQUID_FLOW;
            case FAN_SHUT_OFF -> Dimension.PRESSURE_DIFFERENCE;
            case FAN_RATIO -> Dimension.RATIO;
            default ->
                switch (field.unit()) {
                    case ONE -> Dimension.FRACTION;
                    case COUNT -> Dimension.COUNT;
                    case METRE -> Dimension.LENGTH;
                    case SQUARE_METRE -> Dimension.AREA;
                    case CUBIC_METRE -> Dimension.VOLUME;
                    case CUBIC_METRE_PER_SECOND -> Dimension.AIR_FLOW;
                    case KILOGRAM -> Dimension.MASS;
                    case KELVIN -> Dimension.TEMPERATURE;
                    case KELVIN_DIFFERENCE -> Dimension.TEMPERATURE_DIFFERENCE;
                    case PASCAL -> Dimension.PRESSURE_GAUGE;
                    case WATT -> Dimension.POWER;
                    case WATT_PER_KELVIN -> Dimension.CONDUCTANCE;
                    case SQUARE_METRE_KELVIN_PER_WATT -> Dimension.FOULING;
                    case AMPERE -> Dimension.CURRENT;
                    case PER_SECOND -> Dimension.ROTATION;
                    case RADIAN -> Dimension.ANGLE;
                    case SECOND -> Dimension.DURATION;
                };
        };
    }

    private static final Pattern SHARE = Pattern.compile("0?[.,]\\d+");
    private static final Pattern HALVES = Pattern.compile("50 ?/ ?50");

    /** What people write short, written out: {@code 0.5} of a share is 50 %, and {@code 50/50} of a mix too. */
    static String unfold(BuildField field, String typed) {
        if (of(field) != Dimension.FRACTION) {
            return typed;
        }
        if (SHARE.matcher(typed).matches()) {
            return typed + " of 1";
        }
        return field == BuildField.COOLANT_GLYCOL && HALVES.matcher(typed).matches() ? "50 %" : typed;
    }

    /**
     * Reads what was typed; the fin pitch may be given as fins per length too, as the trade does.
     *
     * @throws UnitException when the text is no such quantity
     */
    public static double parse(BuildField field, String text, UnitSystem system) {
        Dimension dimension = of(field);
        try {
            return toCore(field, Units.parse(text, dimension, system));
        } catch (UnitException e) {
            if (field == BuildField.FIN_PITCH && e.code() == UnitException.Code.UNKNOWN_UNIT) {
                return 1 / Units.parse(text, Dimension.FINS_PER_LENGTH, system);
            }
            throw e;
        }
    }

    static String show(BuildField field, double si, UnitSystem system) {
        return Units.show(fromCore(field, si), of(field), system);
    }

    /** Shafts turn in radians per second at the edge and in revolutions per second in the physics. */
    private static double toCore(BuildField field, double si) {
        return of(field) == Dimension.ROTATION ? si / (2 * Math.PI) : si;
    }

    private static double fromCore(BuildField field, double si) {
        return of(field) == Dimension.ROTATION ? si * 2 * Math.PI : si;
    }
}

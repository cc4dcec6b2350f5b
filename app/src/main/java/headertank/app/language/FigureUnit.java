package headertank.app.language;

import headertank.app.unit.Dimension;
import headertank.calc.quantity.FigureKind;

/** In which units a kind of figure of calc-core is read and shown: the same pascal is a gauge pressure or a difference. */
public final class FigureUnit {

    private FigureUnit() {}

    public static Dimension of(FigureKind kind) {
        return switch (kind) {
            case TEMPERATURE -> Dimension.TEMPERATURE;
            case TEMPERATURE_DIFFERENCE -> Dimension.TEMPERATURE_DIFFERENCE;
            case PRESSURE_ABSOLUTE -> Dimension.PRESSURE_ABSOLUTE;
            case PRESSURE_GAUGE -> Dimension.PRESSURE_GAUGE;
            case PRESSURE_DIFFERENCE -> Dimension.PRESSURE_DIFFERENCE;
            case AIR_FLOW -> Dimension.AIR_FLOW;
            case LIQUID_FLOW -> Dimension.LIQUID_FLOW;
            case POWER -> Dimension.POWER;
            case CURRENT -> Dimension.CURRENT;
            case VOLTAGE -> Dimension.VOLTAGE;
            case CHARGE -> Dimension.CHARGE;
            case LENGTH -> Dimension.LENGTH;
            case ALTITUDE -> Dimension.ALTITUDE;
            case AREA -> Dimension.AREA;
            case VOLUME -> Dimension.VOLUME;
            case MASS -> Dimension.MASS;
            case CONDUCTANCE -> Dimension.CONDUCTANCE;
            case FOULING -> Dimension.FOULING;
            case ANGLE -> Dimension.ANGLE;
            case SPEED -> Dimension.SPEED;
            case TIME -> Dimension.DURATION;
            case ROTATION -> Dimension.ROTATION;
            case SHARE, PROBABILITY -> Dimension.FRACTION;
            case RATIO -> Dimension.RATIO;
            case COUNT -> Dimension.COUNT;
        };
    }

    /** Shafts turn in revolutions per second in the physics and in radians per second at the edge. */
    public static double toEdge(double si, FigureKind kind) {
        return kind == FigureKind.ROTATION ? si * 2 * Math.PI : si;
    }

    /** The other way. */
    public static double toCore(double si, FigureKind kind) {
        return kind == FigureKind.ROTATION ? si / (2 * Math.PI) : si;
    }
}

package headertank.calc.coreclass;

import headertank.calc.choice.CoreMaterial;
import headertank.calc.choice.FinKind;
import headertank.calc.choice.TankPlacement;
import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.GlycolKind;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.radiator.CoreGeometry;
import headertank.calc.radiator.Radiator;
import headertank.calc.radiator.RadiatorPoint;
import headertank.calc.radiator.RadiatorSpec;
import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.util.FastMath;

/**
 * A class of core that stands in when nobody has measured the fins and tubes: typical figures with their spread.
 *
 * @param id short key, stable
 * @param label name in the trade's words
 * @param material what it is made of
 * @param finKind louvred or plain
 * @param rows rows of tubes
 * @param rowGapM gap between two rows [m]
 * @param figures typical figures, each with its spread
 * @param source where the figures come from, in a line
 */
public record CoreClass(
        String id,
        String label,
        CoreMaterial material,
        FinKind finKind,
        int rows,
        double rowGapM,
        Map<CoreFigure, Stated> figures,
        String source) {

    /** @throws IllegalArgumentException when a figure is missing */
    public CoreClass {
        figures = Map.copyOf(figures);
        for (CoreFigure f : CoreFigure.values()) {
            if (!figures.containsKey(f)) {
                throw new IllegalArgumentException("core class " + id + " states no " + f);
            }
        }
    }

    /** @return the typical value of a figure */
    public double typical(CoreFigure figure) {
        return figures.get(figure).si();
    }

    /**
     * @param widthM width of the finned face [m]
     * @param heightM height of the finned face [m]
     * @param known figures that somebody measured, which replace the typical ones
     * @return the core
     * @throws OutOfRangeException when the figures together make no core
     */
    @SuppressWarnings("exports")
    public CoreGeometry geometry(double widthM, double heightM, Map<CoreFigure, Double> known) {
        double depth = value(CoreFigure.DEPTH_M, known);
        double finHeight = value(CoreFigure.FIN_HEIGHT_M, known);
        return new CoreGeometry(
                widthM,
                heightM,
                (depth - (rows - 1) * rowGapM) / rows,
                rows,
                rowGapM,
                value(CoreFigure.TUBE_HEIGHT_M, known),
                value(CoreFigure.TUBE_WALL_M, known),
                finHeight,
                value(CoreFigure.FIN_PITCH_M, known),
                value(CoreFigure.FIN_THICKNESS_M, known),
                finKind,
                value(CoreFigure.LOUVER_PITCH_M, known),
                value(CoreFigure.LOUVER_ANGLE_DEG, known),
                value(CoreFigure.LOUVER_SHARE, known) * finHeight,
                material.finConductivityWPerMK(),
                material.tubeConductivityWPerMK(),
                value(CoreFigure.BOND_RESISTANCE_M2K_PER_W, known),
                value(CoreFigure.COOLANT_FOULING_M2K_PER_W, known),
                0.0,
                false);
    }

    private double value(CoreFigure figure, Map<CoreFigure, Double> known) {
        Double measured = known.get(figure);
        return measured != null ? measured : typical(figure);
    }

    /**
     * Spread of the cores of this class about the typical one: each figure that is not known is moved by one standard
     * deviation, alone, and the logarithms of the changes are added in squares (derived, first order). Computed at a face of
     * 0.65 x 0.40 m, 5 m/s, 95 C against 35 C, 120 L/min; it costs about a dozen radiators, so keep the result.
     *
     * @param known figures that somebody measured
     */
    public CoreSpread spread(Map<CoreFigure, Double> known) {
        double[] base = reference(known);
        double conductance = 0;
        double drop = 0;
        for (CoreFigure f : CoreFigure.values()) {
            Stated stated = figures.get(f);
            if (known.containsKey(f)
                    || stated.spread() == null
                    || stated.spread().sigma() == 0) {
                continue;
            }
            double sigma = stated.spread().sigmaAt(stated.si());
            double[] moved = moved(known, f, stated.si() - sigma, stated.si() + sigma);
            double u = FastMath.log(moved[0] / base[0]);
            double d = FastMath.log(moved[1] / base[1]);
            conductance += u * u;
            drop += d * d;
        }
        return new CoreSpread(FastMath.sqrt(conductance), FastMath.sqrt(drop));
    }

    private double[] moved(Map<CoreFigure, Double> known, CoreFigure figure, double lower, double upper) {
        Map<CoreFigure, Double> with = new EnumMap<>(CoreFigure.class);
        with.putAll(known);
        try {
            with.put(figure, upper);
            return reference(with);
        } catch (OutOfRangeException beyondTheCorrelation) {
            with.put(figure, lower);
            return reference(with);
        }
    }

    private double[] reference(Map<CoreFigure, Double> known) {
        Radiator r = new Radiator(new RadiatorSpec(geometry(0.65, 0.40, known), TankPlacement.SIDES, 1, 0, false));
        Coolant coolant = Coolant.of(GlycolKind.ETHYLENE, 0.5);
        double air = 1.49;
        RadiatorPoint p = r.heat(air, 308.15, Physics.STANDARD_PRESSURE_PA, 0.002, coolant, 368.15);
        return new double[] {p.conductanceWPerK(), r.airDropPa(air, 308.15, p.airOutK(), Physics.STANDARD_PRESSURE_PA)};
    }
}

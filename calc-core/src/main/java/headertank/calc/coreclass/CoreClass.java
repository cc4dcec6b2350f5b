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
import headertank.calc.radiator.LouveredFins;
import headertank.calc.radiator.Radiator;
import headertank.calc.radiator.RadiatorPoint;
import headertank.calc.radiator.RadiatorSpec;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
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

    /**
     * Narrowest row of tubes that a core is made up with where only its depth is stated [m]: two rows of a class find room in
     * any depth that is accepted, so that the depth never takes a row away in one step; modelling choice.
     */
    private static final double NARROWEST_ROW_M = 0.006;

    /** Gap between two rows where the class has only one [m]; modelling choice. */
    private static final double LEAST_GAP_M = 0.002;

    /** Largest share of the depth that a gap between rows takes [-]; modelling choice. */
    private static final double MOST_GAP_SHARE = 0.1;

    private static final CoreGeometry.Face REFERENCE = new CoreGeometry.Face(0.65, 0.40);

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
     * @param face its finned face
     * @param known figures that somebody measured, which replace the typical ones
     * @return a core of this class
     * @throws OutOfRangeException when the figures together make no core
     */
    @SuppressWarnings("exports")
    public CoreGeometry geometry(CoreGeometry.Face face, Map<CoreFigure, Double> known) {
        return geometry(face, material, finKind, rows, f -> known.getOrDefault(f, Double.NaN));
    }

    /**
     * The core of a car: what is known of it, and for the rest what is typical of this class. Rows that find no room in the depth
     * are left out; a material other than that of the class brings sheet of its usual thickness (0.15 mm tubes and 0.05 mm fins of
     * copper and brass, 0.3 and 0.08 mm of aluminium) and joint (soldered or brazed); common practice, no source.
     *
     * @param face its finned face
     * @param madeOf what it is made of
     * @param fins louvred or plain; louvred ones are made of a depth within {@link LouveredFins#RATED_DEPTH_M}
     * @param rowsOfTubes rows of tubes
     * @param known each figure that is known, no number for the others
     * @return its geometry
     * @throws OutOfRangeException when the figures together make no core
     */
    @SuppressWarnings("exports")
    public CoreGeometry geometry(
            CoreGeometry.Face face,
            CoreMaterial madeOf,
            FinKind fins,
            int rowsOfTubes,
            ToDoubleFunction<CoreFigure> known) {
        double stated = value(CoreFigure.DEPTH_M, known);
        double depth = fins == FinKind.LOUVERED ? LouveredFins.RATED_DEPTH_M.clamp(stated) : stated;
        int most = (int) Math.max(1, Math.floor(depth / NARROWEST_ROW_M));
        int fitted = Math.min(most, rowsOfTubes);
        double gap = fitted > 1 ? Math.min(Math.max(rowGapM, LEAST_GAP_M), MOST_GAP_SHARE * depth) : 0;
        double tubeWidth = (depth - (fitted - 1) * gap) / fitted;
        double tubeHeight = Math.min(value(CoreFigure.TUBE_HEIGHT_M, known), 0.9 * tubeWidth);
        double pitch = value(CoreFigure.FIN_PITCH_M, known);
        double finHeight = value(CoreFigure.FIN_HEIGHT_M, known);
        boolean copper = madeOf == CoreMaterial.COPPER_BRASS;
        ToDoubleFunction<CoreFigure> sheet = f -> madeOf == material || !Double.isNaN(known.applyAsDouble(f))
                ? value(f, known)
                : switch (f) {
                    case TUBE_WALL_M -> copper ? 1.5e-4 : 3e-4;
                    case FIN_THICKNESS_M -> copper ? 5e-5 : 8e-5;
                    default -> copper ? 5e-6 : 0;
                };
        return new CoreGeometry(
                face,
                new CoreGeometry.Tubes(
                        tubeWidth,
                        tubeHeight,
                        Math.min(sheet.applyAsDouble(CoreFigure.TUBE_WALL_M), 0.4 * tubeHeight),
                        fitted,
                        gap,
                        madeOf.tubeConductivityWPerMK(),
                        false),
                new CoreGeometry.Fins(
                        fins,
                        finHeight,
                        pitch,
                        Math.min(sheet.applyAsDouble(CoreFigure.FIN_THICKNESS_M), 0.35 * pitch),
                        madeOf.finConductivityWPerMK(),
                        new CoreGeometry.Louvers(
                                value(CoreFigure.LOUVER_PITCH_M, known),
                                value(CoreFigure.LOUVER_ANGLE_DEG, known),
                                value(CoreFigure.LOUVER_SHARE, known) * finHeight)),
                new CoreGeometry.Resistances(
                        sheet.applyAsDouble(CoreFigure.BOND_RESISTANCE_M2K_PER_W),
                        value(CoreFigure.COOLANT_FOULING_M2K_PER_W, known),
                        0));
    }

    private double value(CoreFigure figure, ToDoubleFunction<CoreFigure> known) {
        double measured = known.applyAsDouble(figure);
        return Double.isNaN(measured) ? typical(figure) : measured;
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
        Radiator r = new Radiator(new RadiatorSpec(geometry(REFERENCE, known), TankPlacement.SIDES, 1, 0, false));
        Coolant coolant = Coolant.of(GlycolKind.ETHYLENE, 0.5);
        double air = 1.49;
        RadiatorPoint p = r.heat(air, 308.15, Physics.STANDARD_PRESSURE_PA, 0.002, coolant, 368.15);
        return new double[] {p.conductanceWPerK(), r.airDropPa(air, 308.15, p.airOutK(), Physics.STANDARD_PRESSURE_PA)};
    }
}

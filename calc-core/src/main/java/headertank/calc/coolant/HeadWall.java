package headertank.calc.coolant;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.util.FastMath;

/**
 * The coolant-side wall of the head, where boiling begins: T_w = T_h + q'' / h.
 *
 * <p>h = 0.023 Re^0.8 Pr^0.4 k / D, Dittus and Boelter, from memory; Re = rho v D / mu with v velocity in the jacket
 * [m/s], D its width [m]. Source's range Re 1e4 and above; from 2300 to 1e4 computed with a note, below 2300 typed error.
 * The wall stands above saturation at full load in any build: that is nucleate boiling and normal, so this is information
 * and no limit.
 *
 * @param reynolds Re [-]
 * @param filmWPerM2K h [W/m2K]
 * @param wallK T_w without credit for boiling [K]
 * @param pressurePa absolute pressure in the head [Pa]
 * @param saturationK boiling temperature there [K]
 * @param superheatK wall above saturation, negative when no boiling is expected [K]
 */
public record HeadWall(
        double reynolds, double filmWPerM2K, double wallK, double pressurePa, double saturationK, double superheatK) {

    /** Smallest Reynolds number that is accepted [-]. */
    public static final double LEAST_REYNOLDS = 2300;

    private static final Range TURBULENT = Range.of(1e4, 1e7);
    private static final Range ACCEPTED = Range.of(LEAST_REYNOLDS, 1e7);

    /**
     * The state of the coolant in the head's jacket.
     *
     * @param bulkK coolant temperature [K]
     * @param velocityMPerS velocity along the wall, usually 2 to 3 [m/s]
     * @param widthM hydraulic diameter of the passage, about 0.01 [m]
     * @param densityKgPerM3 density [kg/m3]
     * @param viscosityPaS dynamic viscosity [Pa s]
     * @param heatCapacityJPerKgK specific heat capacity [J/kgK]
     * @param conductivityWPerMK thermal conductivity [W/mK]
     */
    public record Jacket(
            double bulkK,
            double velocityMPerS,
            double widthM,
            double densityKgPerM3,
            double viscosityPaS,
            double heatCapacityJPerKgK,
            double conductivityWPerMK) {}

    /**
     * @param jacket the coolant along the wall
     * @param heatFluxWPerM2 q'', up to about 1e6 at full load (from memory) [W/m2]
     * @param pressurePa absolute pressure in the head, see {@link #pressurePa} [Pa]
     * @param boilingK boiling temperature [K] of this coolant at an absolute pressure [Pa]
     * @return the wall
     */
    public static HeadWall of(Jacket jacket, double heatFluxWPerM2, double pressurePa, DoubleUnaryOperator boilingK) {
        double reynolds = jacket.densityKgPerM3() * jacket.velocityMPerS() * jacket.widthM() / jacket.viscosityPaS();
        double prandtl = jacket.viscosityPaS() * jacket.heatCapacityJPerKgK() / jacket.conductivityWPerMK();
        double film = nusselt(reynolds, prandtl) * jacket.conductivityWPerMK() / jacket.widthM();
        double wall = jacket.bulkK() + heatFluxWPerM2 / film;
        double saturation = boilingK.applyAsDouble(pressurePa);
        return new HeadWall(reynolds, film, wall, pressurePa, saturation, wall - saturation);
    }

    /** @return Nu = 0.023 Re^0.8 Pr^0.4 for a heated liquid [-]; Re 2300 to 1e7, outside: typed error */
    public static double nusselt(double reynolds, double prandtl) {
        OutOfRangeException.require("jacketReynolds", reynolds, ACCEPTED);
        return 0.023 * FastMath.pow(reynolds, 0.8) * FastMath.pow(prandtl, 0.4);
    }

    /**
     * Pressure in the head: that of the hot tank, plus what hoses (half of their drop) and thermostat hold back.
     *
     * @param capPressurePa absolute pressure at the cap [Pa]
     * @param position where the cap sits
     * @param flow the balanced circuit
     * @return absolute pressure at the head's outlet [Pa]; derived
     */
    public static double pressurePa(double capPressurePa, CapPosition position, CoolantFlow flow) {
        double core = position == CapPosition.COLD_TANK ? flow.radiatorDropPa() : 0.0;
        return capPressurePa + core + flow.thermostatDropPa() + 0.5 * flow.hoseDropPa();
    }

    /** @return a note when the flow is less turbulent than the source covers, else none */
    public List<Note> notes() {
        if (TURBULENT.contains(reynolds)) {
            return List.of();
        }
        return List.of(new Note(
                "jacketReynolds", reynolds, TURBULENT, Note.Action.WIDENED, 1.5, NoteText.HEAD_FLOW_TOO_SLOW.with()));
    }

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        List<WorkingLine> lines = new ArrayList<>();
        lines.add(new WorkingLine(WorkedQuantity.HEAD_REYNOLDS, "Re", "-", reynolds, "derived"));
        lines.add(new WorkingLine(
                WorkedQuantity.HEAD_FILM, "h", "W/m2K", filmWPerM2K, "Dittus and Boelter, from memory"));
        lines.add(new WorkingLine(WorkedQuantity.HEAD_WALL, "T_w", "K", wallK, "derived"));
        lines.add(
                new WorkingLine(WorkedQuantity.BOILING_IN_HEAD, "T_sat", "K", saturationK, "coolant's boiling curve"));
        lines.add(new WorkingLine(WorkedQuantity.WALL_ABOVE_BOILING, "-", "K", superheatK, "derived"));
        return List.copyOf(lines);
    }
}

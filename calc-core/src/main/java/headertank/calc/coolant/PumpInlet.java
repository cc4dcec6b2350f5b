package headertank.calc.coolant;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;

/**
 * Whether the pump cavitates: pressure at its inlet above the vapour pressure there, against what it needs.
 *
 * <p>p = p_cap - dp_rad - dp_hose with the cap on the hot tank, p_cap - dp_hose with it on the cold one; available = p -
 * p_vapour(T_c); required = 15 kPa (n/nr)^2, a guess good to a factor of two (modelling choice). The whole hose drop is
 * charged to the return hose, the careful side.
 *
 * @param pressurePa absolute pressure at the inlet; negative means that it would boil first [Pa]
 * @param availablePa pressure above the vapour's [Pa]
 * @param requiredPa what the pump needs of that [Pa]
 * @param marginPa available less required [Pa]
 * @param flowFactor factor on the pump's flow, 0.8 when it cavitates, else 1; modelling choice [-]
 */
public record PumpInlet(double pressurePa, double availablePa, double requiredPa, double marginPa, double flowFactor) {

    /** Needed above the vapour pressure at rated speed [Pa]; modelling choice, within a factor of two. */
    public static final double REQUIRED_AT_RATED_PA = 15e3;

    /** Flow that a cavitating pump still delivers [-]; modelling choice. */
    public static final double CAVITATING_FLOW = 0.8;

    /**
     * @param capPressurePa absolute pressure at the cap [Pa]
     * @param position where the cap sits
     * @param flow the balanced circuit
     * @param vapourPa vapour pressure of the coolant that leaves the radiator [Pa]
     * @param speedShare pump speed over rated speed [-]
     * @return state of the inlet
     */
    public static PumpInlet of(
            double capPressurePa, CapPosition position, CoolantFlow flow, double vapourPa, double speedShare) {
        double core = position == CapPosition.HOT_TANK ? flow.radiatorDropPa() : 0.0;
        double pressure = capPressurePa - core - flow.hoseDropPa();
        double available = pressure - vapourPa;
        double required = REQUIRED_AT_RATED_PA * speedShare * speedShare;
        double margin = available - required;
        return new PumpInlet(pressure, available, required, margin, margin < 0 ? CAVITATING_FLOW : 1.0);
    }

    /** @return whether the pump cavitates */
    public boolean cavitates() {
        return marginPa < 0;
    }

    /** @return a note when it cavitates, else none */
    public List<Note> notes() {
        if (!cavitates()) {
            return List.of();
        }
        return List.of(new Note(
                "pumpInletMarginPa",
                marginPa,
                Range.of(0, Double.MAX_VALUE),
                Note.Action.WIDENED,
                1.5,
                NoteText.PUMP_DRAWS_VAPOUR.with()));
    }

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        return List.of(
                new WorkingLine(WorkedQuantity.PRESSURE_AT_THE_PUMP_S_INLET, "p_in", "Pa", pressurePa, "derived"),
                new WorkingLine(WorkedQuantity.PRESSURE_ABOVE_THE_VAPOUR_S, "NPSH_a", "Pa", availablePa, "derived"),
                new WorkingLine(
                        WorkedQuantity.PRESSURE_THAT_THE_PUMP_NEEDS, "NPSH_r", "Pa", requiredPa, "modelling choice"),
                new WorkingLine(WorkedQuantity.MARGIN_TO_CAVITATION, "-", "Pa", marginPa, "derived"));
    }
}

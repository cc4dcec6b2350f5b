package headertank.calc.coolant;

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
 * @param flowFactor factor on the pump's flow: 1 with all that it needs, 0.8 where 60 kPa of that are lacking, straight
 *     between; modelling choice [-]
 */
public record PumpInlet(double pressurePa, double availablePa, double requiredPa, double marginPa, double flowFactor) {

    /** Needed above the vapour pressure at rated speed [Pa]; modelling choice, within a factor of two. */
    public static final double REQUIRED_AT_RATED_PA = 15e3;

    /** Flow that a pump still delivers that lacks {@link #LACKING_PA} [-]; modelling choice. */
    public static final double CAVITATING_FLOW = 0.8;

    /**
     * Lacking pressure at which the loss of flow is whole [Pa]; modelling choice. Some 8 K of coolant temperature: over a
     * narrower span a hotter car would give off less heat, and have two steady states or none near them.
     */
    public static final double LACKING_PA = 60e3;

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
        double lacking = margin < 0 && required > 0 ? Math.min(1, -margin / LACKING_PA) : 0;
        return new PumpInlet(pressure, available, required, margin, 1 - (1 - CAVITATING_FLOW) * lacking);
    }

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        return List.of(
                new WorkingLine(WorkedQuantity.PUMP_INLET_PRESSURE, "p_in", "Pa", pressurePa, "derived"),
                new WorkingLine(WorkedQuantity.PRESSURE_ABOVE_VAPOUR, "NPSH_a", "Pa", availablePa, "derived"),
                new WorkingLine(WorkedQuantity.PUMP_INLET_NEED, "NPSH_r", "Pa", requiredPa, "modelling choice"),
                new WorkingLine(WorkedQuantity.MARGIN_TO_CAVITATION, "-", "Pa", marginPa, "derived"),
                new WorkingLine(WorkedQuantity.PUMP_FLOW_LEFT, "-", "-", flowFactor, "modelling choice"));
    }
}

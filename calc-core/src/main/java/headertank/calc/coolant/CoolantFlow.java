package headertank.calc.coolant;

import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;

/**
 * Flows and pressure differences of a balanced circuit.
 *
 * @param pumpM3PerS flow through pump and block [m3/s]
 * @param radiatorM3PerS flow through hoses, thermostat and radiator [m3/s]
 * @param bypassM3PerS flow through the bypass [m3/s]
 * @param pumpRisePa pressure rise of the pump [Pa]
 * @param radiatorDropPa pressure drop of the radiator [Pa]
 * @param thermostatDropPa pressure drop of thermostat or empty housing [Pa]
 * @param hoseDropPa pressure drop of the hoses [Pa]
 * @param blockDropPa pressure drop of block and head [Pa]
 * @param residualPa pump rise less the drops around the radiator's loop [Pa]
 */
public record CoolantFlow(
        double pumpM3PerS,
        double radiatorM3PerS,
        double bypassM3PerS,
        double pumpRisePa,
        double radiatorDropPa,
        double thermostatDropPa,
        double hoseDropPa,
        double blockDropPa,
        double residualPa) {

    /** Nothing moves: the pump stands still. */
    public static final CoolantFlow STILL = new CoolantFlow(0, 0, 0, 0, 0, 0, 0, 0, 0);

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        String balance = "balance of pump and branches, derived";
        String ratio = "k Q^2 with k a multiple of the pump's c, modelling choice";
        return List.of(
                new WorkingLine(WorkedQuantity.PUMP_FLOW, "Q_v", "m3/s", pumpM3PerS, balance),
                new WorkingLine(WorkedQuantity.RADIATOR_FLOW, "Q_r", "m3/s", radiatorM3PerS, balance),
                new WorkingLine(WorkedQuantity.BYPASS_FLOW, "Q_b", "m3/s", bypassM3PerS, balance),
                new WorkingLine(
                        WorkedQuantity.PUMP_RISE,
                        "dp_p",
                        "Pa",
                        pumpRisePa,
                        "p0 n^2 - c Q^2, affinity laws, from memory"),
                new WorkingLine(WorkedQuantity.BLOCK_DROP, "dp_b", "Pa", blockDropPa, ratio),
                new WorkingLine(WorkedQuantity.HOSE_DROP, "dp_h", "Pa", hoseDropPa, ratio),
                new WorkingLine(WorkedQuantity.THERMOSTAT_DROP, "dp_t", "Pa", thermostatDropPa, ratio),
                new WorkingLine(WorkedQuantity.RADIATOR_DROP, "dp_r", "Pa", radiatorDropPa, "radiator's drop curve"),
                new WorkingLine(WorkedQuantity.COOLANT_BALANCE_RESIDUAL, "-", "Pa", residualPa, "derived"));
    }
}

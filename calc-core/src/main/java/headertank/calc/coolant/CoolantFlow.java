package headertank.calc.coolant;

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
                new WorkingLine("coolant flow through the pump", "Q_v", "m3/s", pumpM3PerS, balance),
                new WorkingLine("coolant flow through the radiator", "Q_r", "m3/s", radiatorM3PerS, balance),
                new WorkingLine("coolant flow through the bypass", "Q_b", "m3/s", bypassM3PerS, balance),
                new WorkingLine(
                        "pressure rise of the pump",
                        "dp_p",
                        "Pa",
                        pumpRisePa,
                        "p0 n^2 - c Q^2, affinity laws, from memory"),
                new WorkingLine("pressure drop of the block", "dp_b", "Pa", blockDropPa, ratio),
                new WorkingLine("pressure drop of the hoses", "dp_h", "Pa", hoseDropPa, ratio),
                new WorkingLine("pressure drop of the thermostat", "dp_t", "Pa", thermostatDropPa, ratio),
                new WorkingLine("pressure drop of the radiator", "dp_r", "Pa", radiatorDropPa, "radiator's drop curve"),
                new WorkingLine("residual of the coolant balance", "-", "Pa", residualPa, "derived"));
    }
}

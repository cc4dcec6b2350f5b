package headertank.calc.result;

import headertank.calc.engine.HeatSplit;
import headertank.calc.quantity.Message;

/** Outcome of a steady balance at one operating point. */
public sealed interface Balance {

    /**
     * A steady state exists.
     *
     * @param engineOutK coolant leaving the engine, bulk [K]
     * @param radiatorOutK coolant leaving the radiator [K]
     * @param oilK engine oil [K]
     * @param ambientK air around the car [K]
     * @param airInK air entering the core, after recirculation and coolers in front [K]
     * @param airOutK air leaving the core [K]
     * @param heat where the fuel's power goes
     * @param radiatorHeatW heat through the radiator [W]
     * @param surfaceHeatW heat from hoses and block to the air under the hood [W]
     * @param oilToCoolantW heat that the coolant takes from the oil [W]
     * @param airMassKgPerS air through the core [kg/s]
     * @param faceVelocityMPerS face velocity at inlet density [m/s]
     * @param fanDuty duty of the fans at this state, 0 to 1 [-]
     * @param fanSpeedFactor fan speed over its speed at 13 V and full duty [-]
     * @param pumpM3PerS flow through the pump [m3/s]
     * @param radiatorM3PerS flow through the radiator [m3/s]
     * @param radiatorDropPa coolant pressure drop of the radiator [Pa]
     * @param pumpRisePa pressure rise of the pump [Pa]
     * @param thermostatDropPa pressure drop across the thermostat [Pa]
     * @param lift thermostat lift as a share of its flow area [-]
     * @param conductanceWPerK radiator conductance UA [W/K]
     * @param ntu number of transfer units [-]
     * @param capacityRatio smaller over larger heat capacity rate [-]
     * @param effectiveness effectiveness of the radiator [-]
     * @param airSideShare share of the air side in the resistance of the radiator [-]
     * @param tubeReynolds Reynolds number in the tubes [-]
     * @param boilingK boiling point of the coolant at the cap [K]
     * @param pumpInletMarginPa pressure at the pump inlet above what it needs [Pa]
     * @param fanCurrentA current of all electric fans [A]
     * @param availableA what the alternator gives at this speed [A]
     * @param loadA fans and everything else [A]
     * @param batteryV voltage at the fans [V]
     * @param residualW what is left of the heat balance [W]
     * @param residualShare the same as a share of the heat to the coolant [-]
     * @param airResidualPa what is left of the air balance [Pa]
     * @param coolantResidualPa what is left of the coolant balance [Pa]
     * @param evaluations evaluations of the heat balance that the solver needed
     */
    record Steady(
            double engineOutK,
            double radiatorOutK,
            double oilK,
            double ambientK,
            double airInK,
            double airOutK,
            HeatSplit heat,
            double radiatorHeatW,
            double surfaceHeatW,
            double oilToCoolantW,
            double airMassKgPerS,
            double faceVelocityMPerS,
            double fanDuty,
            double fanSpeedFactor,
            double pumpM3PerS,
            double radiatorM3PerS,
            double radiatorDropPa,
            double pumpRisePa,
            double thermostatDropPa,
            double lift,
            double conductanceWPerK,
            double ntu,
            double capacityRatio,
            double effectiveness,
            double airSideShare,
            double tubeReynolds,
            double boilingK,
            double pumpInletMarginPa,
            double fanCurrentA,
            double availableA,
            double loadA,
            double batteryV,
            double residualW,
            double residualShare,
            double airResidualPa,
            double coolantResidualPa,
            int evaluations)
            implements Balance {

        /** @return current that the battery must give [A], 0 when the alternator suffices */
        public double deficitA() {
            return Math.max(0, loadA - availableA);
        }
    }

    /**
     * No steady state exists or it cannot be computed.
     *
     * @param reason why
     * @param explanation the same with the figures
     */
    record None(Reason reason, Message explanation) implements Balance {}

    /** Why there is no steady state. */
    enum Reason {
        /** Even at the hottest temperature tried the radiator cannot give off the heat. */
        HEAT_EXCEEDS_COOLING,
        /** No coolant passes the engine: only a run over time is defined. */
        NO_COOLANT_FLOW,
        /** The engine cannot deliver what the duty asks for. */
        DEMAND_EXCEEDS_POWER
    }
}

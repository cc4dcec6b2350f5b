package headertank.calc.result;

import headertank.calc.quantity.Message;

/** Outcome of a steady balance at one operating point. */
public sealed interface Balance {

    /**
     * A steady state exists.
     *
     * @param engineOutK coolant leaving the engine, bulk [K]
     * @param ambientK air around the car [K]
     * @param boilingK boiling point of the coolant at the cap [K]
     * @param surfaceHeatW heat from hoses and block to the air under the hood [W]
     * @param heat where the fuel's power goes
     * @param air the air through the core
     * @param coolant the coolant's round
     * @param core the radiator's core
     * @param oil the engine's oil
     * @param electrics fans, alternator and battery
     * @param residuals what the solver left over
     */
    record Steady(
            double engineOutK,
            double ambientK,
            double boilingK,
            double surfaceHeatW,
            FuelPower heat,
            AirSide air,
            CoolantSide coolant,
            Core core,
            Oil oil,
            Electrics electrics,
            Residuals residuals)
            implements Balance {}

    /**
     * Where the fuel's power goes; the six shares sum to it.
     *
     * @param fuelW fuel flow times lower heating value [W]
     * @param brakeW power at the crankshaft and accessories [W]
     * @param coolantW heat to the coolant [W]
     * @param oilW heat to the oil [W]
     * @param exhaustW heat and unused enthalpy in the exhaust [W]
     * @param unburntW heating value that leaves unburnt [W]
     * @param miscW radiation, accessories and the rest [W]
     */
    record FuelPower(
            double fuelW,
            double brakeW,
            double coolantW,
            double oilW,
            double exhaustW,
            double unburntW,
            double miscW) {}

    /**
     * The air through the core.
     *
     * @param inK air entering the core, after recirculation and coolers in front [K]
     * @param outK air leaving the core [K]
     * @param massKgPerS air through the core [kg/s]
     * @param faceVelocityMPerS face velocity at inlet density [m/s]
     * @param fanDuty duty of the fans at this state, 0 to 1 [-]
     * @param fanSpeedFactor fan speed over its speed at 13 V and full duty [-]
     */
    record AirSide(
            double inK,
            double outK,
            double massKgPerS,
            double faceVelocityMPerS,
            double fanDuty,
            double fanSpeedFactor) {}

    /**
     * The coolant's round.
     *
     * @param radiatorOutK coolant leaving the radiator [K]
     * @param pumpM3PerS flow through the pump [m3/s]
     * @param radiatorM3PerS flow through the radiator [m3/s]
     * @param radiatorDropPa coolant pressure drop of the radiator [Pa]
     * @param pumpRisePa pressure rise of the pump [Pa]
     * @param thermostatDropPa pressure drop across the thermostat [Pa]
     * @param lift thermostat lift as a share of its flow area [-]
     * @param pumpInletMarginPa pressure at the pump inlet above what it needs [Pa]
     */
    record CoolantSide(
            double radiatorOutK,
            double pumpM3PerS,
            double radiatorM3PerS,
            double radiatorDropPa,
            double pumpRisePa,
            double thermostatDropPa,
            double lift,
            double pumpInletMarginPa) {}

    /**
     * The radiator's core.
     *
     * @param heatW heat through the radiator [W]
     * @param conductanceWPerK conductance UA [W/K]
     * @param ntu number of transfer units [-]
     * @param capacityRatio smaller over larger heat capacity rate [-]
     * @param effectiveness effectiveness [-]
     * @param airSideShare share of the air side in the resistance [-]
     * @param tubeReynolds Reynolds number in the tubes [-]
     */
    record Core(
            double heatW,
            double conductanceWPerK,
            double ntu,
            double capacityRatio,
            double effectiveness,
            double airSideShare,
            double tubeReynolds) {}

    /**
     * The engine's oil.
     *
     * @param oilK engine oil [K]
     * @param toCoolantW heat that the coolant takes from the oil [W]
     */
    record Oil(double oilK, double toCoolantW) {}

    /**
     * Fans, alternator and battery.
     *
     * @param fanA current of all electric fans [A]
     * @param availableA what the alternator gives at this speed [A]
     * @param loadA fans and everything else [A]
     * @param batteryV voltage at the fans [V]
     */
    record Electrics(double fanA, double availableA, double loadA, double batteryV) {

        /** @return current that the battery must give [A], 0 when the alternator suffices */
        public double deficitA() {
            return Math.max(0, loadA - availableA);
        }
    }

    /**
     * What the solver left over.
     *
     * @param heatW what is left of the heat balance [W]
     * @param heatShare the same as a share of the heat to the coolant [-]
     * @param airPa what is left of the air balance [Pa]
     * @param coolantPa what is left of the coolant balance [Pa]
     * @param evaluations evaluations of the heat balance that the solver needed
     */
    record Residuals(double heatW, double heatShare, double airPa, double coolantPa, int evaluations) {}

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

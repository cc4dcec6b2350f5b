package headertank.calc.result;

import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.TubeRegime;
import java.util.List;

/**
 * Must coolant pass the radiator slowly? For one car at one operating point: heat against coolant flow beside the
 * temperature drop per pass of the coolant, the same with one, two and three passes on the car's own pump, and what the
 * thermostat does besides.
 *
 * <p>Air flow, air inlet and coolant inlet are held at the point's steady state, so that only the coolant's flow differs;
 * a car without one is shown at its coolant limit in the point's ambient with the air of that state. All quantities come
 * from the models of the rating; the comparison is derived.
 *
 * @param point the operating point at which heat and flow were compared
 * @param coolantInK coolant entering the radiator, held [K]
 * @param airInK air entering the core, held [K]
 * @param airMassKgPerS air through the core, held [kg/s]
 * @param flowNowM3PerS coolant flow through the radiator at the point's steady state [m3/s]
 * @param againstFlow heat and temperature drop against coolant flow, slowest first
 * @param passes one, two and three passes at three pump speeds
 * @param withThermostat light load on a cold day with a thermostat
 * @param withoutThermostat the same with the thermostat taken out and the bypass left open
 */
public record SlowCoolant(
        OperatingPoint point,
        double coolantInK,
        double airInK,
        double airMassKgPerS,
        double flowNowM3PerS,
        List<FlowLine> againstFlow,
        List<PassLine> passes,
        Thermostatted withThermostat,
        Thermostatted withoutThermostat) {

    /** The cold day of the comparison, 5 C [K]. */
    public static final double COLD_DAY_K = 278.15;

    /** Coolant at which warming up is compared, 50 C [K]. */
    public static final double WARMING_K = 323.15;

    public SlowCoolant {
        againstFlow = List.copyOf(againstFlow);
        passes = List.copyOf(passes);
    }

    /**
     * One coolant flow.
     *
     * @param flowM3PerS coolant flow [m3/s]
     * @param heatW heat given off [W]
     * @param coolantDropK temperature drop of the coolant [K]
     * @param pressureDropPa pressure drop of the coolant [Pa]
     * @param tubeReynolds Reynolds number in the tubes [-]
     * @param tubeRegime how the coolant flows there
     */
    public record FlowLine(
            double flowM3PerS,
            double heatW,
            double coolantDropK,
            double pressureDropPa,
            double tubeReynolds,
            TubeRegime tubeRegime) {}

    /**
     * A number of passes on the car's own pump.
     *
     * @param passes number of passes
     * @param pumpSpeedShare pump speed over rated speed [-]
     * @param flowM3PerS flow that the pump still brings through the radiator, thermostat open [m3/s]
     * @param heatW heat at this flow [W]
     * @param heatAtFlowOfOneW heat if the pump brought as much as through a single pass [W]
     * @param coolantDropK temperature drop of the coolant [K]
     * @param pressureDropPa pressure drop of the radiator [Pa]
     * @param tubeReynolds Reynolds number in the tubes [-]
     * @param regime how the coolant flows there
     */
    public record PassLine(
            int passes,
            double pumpSpeedShare,
            double flowM3PerS,
            double heatW,
            double heatAtFlowOfOneW,
            double coolantDropK,
            double pressureDropPa,
            double tubeReynolds,
            TubeRegime regime) {}

    /**
     * What the thermostat does for this car.
     *
     * @param lightLoadK coolant out of the engine at light load on the cold day, NaN without a steady state [K]
     * @param lightLoadOilK oil in the same state, NaN without one [K]
     * @param lossWhileWarmingW heat that the car gives off at {@link #WARMING_K} coolant on the cold day at light load [W]
     * @param warmingW what is left of the engine's heat to warm it [W]
     * @param bypassShare share of the pump's flow that goes past the radiator when the coolant is at its limit [-]
     * @param radiatorM3PerS flow through the radiator then [m3/s]
     * @param headPressurePa absolute pressure at the head's outlet then [Pa]
     * @param headBoilingK boiling point of the coolant at that pressure [K]
     */
    public record Thermostatted(
            double lightLoadK,
            double lightLoadOilK,
            double lossWhileWarmingW,
            double warmingW,
            double bypassShare,
            double radiatorM3PerS,
            double headPressurePa,
            double headBoilingK) {}

    /** @return the answer with this car's figures; one entry is one paragraph */
    public List<Message> inWords() {
        return SlowCoolantWords.of(this);
    }
}

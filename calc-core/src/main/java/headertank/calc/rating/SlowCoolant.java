package headertank.calc.rating;

import headertank.calc.quantity.Message;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.coolant.CapPosition;
import headertank.calc.coolant.CoolantFlow;
import headertank.calc.coolant.HeadWall;
import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.radiator.FlowPoint;
import headertank.calc.radiator.RadiatorPoint;
import headertank.calc.radiator.TubeRegime;
import headertank.calc.result.Balance;
import java.util.ArrayList;
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
        List<FlowPoint> againstFlow,
        List<PassLine> passes,
        Thermostatted withThermostat,
        Thermostatted withoutThermostat) {

    /** Flows of the table, in shares of the pump's largest flow [-]. */
    private static final double[] FLOW_SHARES = {0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1.0};

    /** Pump speeds of the comparison of passes, over rated speed [-]: idle, cruising, full speed. */
    private static final double[] PUMP_SPEEDS = {0.15, 0.5, 1.0};

    /** The cold day of the comparison, 5 C [K]. */
    public static final double COLD_DAY_K = 278.15;

    /** Coolant at which warming up is compared, 50 C [K]. */
    public static final double WARMING_K = 323.15;

    private static final OperatingPoint LIGHT = new OperatingPoint(
            "light", "Light load, 50 km/h on the level", 50 / 3.6, 0, 0, new Demand.Road(0, 500, 0.30), 0);

    public SlowCoolant {
        againstFlow = List.copyOf(againstFlow);
        passes = List.copyOf(passes);
    }

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

    /**
     * @param plant the car
     * @param point the operating point at which heat and flow are compared
     * @return the comparison for this car
     */
    public static SlowCoolant of(Plant plant, OperatingPoint point) {
        SteadySolver solver = new SteadySolver(plant, point);
        Balance balance = solver.solve();
        double limit = plant.resolved().value(BuildField.COOLANT_LIMIT);
        double hot = balance instanceof Balance.Steady s ? s.engineOutK() : limit;
        if (!(balance instanceof Balance.Steady)) {
            solver.residualW(hot, solver.designAmbientK());
        }
        double airIn = solver.air().airInK();
        double air = solver.air().flow().massKgPerS();
        List<Double> flows = new ArrayList<>();
        for (double share : FLOW_SHARES) {
            flows.add(share * plant.pump().maxFlowM3PerS());
        }
        List<FlowPoint> table =
                plant.radiator().heatAgainstCoolantFlow(flows, air, airIn, plant.atmospherePa(), plant.coolant(), hot);
        double pumpSpeed = solver.load().pumpSpeedShare();
        return new SlowCoolant(
                point,
                hot,
                airIn,
                air,
                solver.coolantFlow().radiatorM3PerS(),
                table,
                passes(plant, hot, airIn, air),
                thermostatted(
                        plant,
                        pumpSpeed,
                        limit,
                        plant.resolved()
                                .with(BuildField.THERMOSTAT, ThermostatFitting.FITTED)
                                .with(BuildField.THERMOSTAT_BYPASS, BypassState.CLOSES_WITH_LIFT)),
                thermostatted(
                        plant,
                        pumpSpeed,
                        limit,
                        plant.resolved()
                                .with(BuildField.THERMOSTAT, ThermostatFitting.REMOVED)
                                .with(BuildField.THERMOSTAT_BYPASS, BypassState.OPEN)));
    }

    private static List<PassLine> passes(Plant plant, double hot, double airIn, double air) {
        List<PassLine> lines = new ArrayList<>();
        for (double speed : PUMP_SPEEDS) {
            double flowOfOne = 0;
            for (int n = 1; n <= 3; n++) {
                Plant with = Plant.of(plant.resolved().with(BuildField.CORE_PASSES, n), plant.factors());
                double flow = flow(with, speed, 1.0, hot).radiatorM3PerS();
                flowOfOne = n == 1 ? flow : flowOfOne;
                RadiatorPoint real = heat(with, air, airIn, flow, hot);
                lines.add(new PassLine(
                        n,
                        speed,
                        flow,
                        real.heatW(),
                        heat(with, air, airIn, flowOfOne, hot).heatW(),
                        hot - real.coolantOutK(),
                        with.radiator().coolantDropPa(flow, with.coolant(), hot),
                        real.tubeReynolds(),
                        real.tubeRegime()));
            }
        }
        return lines;
    }

    private static RadiatorPoint heat(Plant p, double air, double airIn, double flow, double hot) {
        return p.radiator().heat(air, airIn, p.atmospherePa(), flow, p.coolant(), hot);
    }

    private static CoolantFlow flow(Plant p, double speed, double lift, double hot) {
        return p.circuit().solve(speed, lift, q -> p.radiator().coolantDropPa(q, p.coolant(), hot));
    }

    private static Thermostatted thermostatted(Plant plant, double pumpSpeed, double limitK, Resolved changed) {
        Plant warm = Plant.of(changed, plant.factors());
        Plant cold = Plant.of(changed.with(BuildField.AMBIENT, COLD_DAY_K), plant.factors());
        SteadySolver light = new SteadySolver(cold, LIGHT);
        Balance settled = light.solve();
        double left = -light.residualW(WARMING_K, COLD_DAY_K);
        double hot = Math.max(limitK, warm.thermostat().fullOpenK());
        CoolantFlow open = flow(warm, pumpSpeed, 1.0, hot);
        double pressure = HeadWall.pressurePa(warm.capPressurePa(), CapPosition.HOT_TANK, open);
        return new Thermostatted(
                settled instanceof Balance.Steady s ? s.engineOutK() : Double.NaN,
                settled instanceof Balance.Steady s ? s.oilK() : Double.NaN,
                light.load().coolantW() - left,
                left,
                open.pumpM3PerS() > 0 ? open.bypassM3PerS() / open.pumpM3PerS() : 0,
                open.radiatorM3PerS(),
                pressure,
                warm.coolant().boilingK(pressure));
    }

    /** @return the answer with this car's figures; one entry is one paragraph */
    public List<Message> inWords() {
        return SlowCoolantWords.of(this);
    }
}

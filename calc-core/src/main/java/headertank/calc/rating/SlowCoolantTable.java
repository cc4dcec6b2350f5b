package headertank.calc.rating;

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
import headertank.calc.result.Balance;
import headertank.calc.result.SlowCoolant;
import java.util.ArrayList;
import java.util.List;

/**
 * Must coolant pass the radiator slowly? Compares coolant flows, passes and thermostats for one car at one operating point, see
 * {@link SlowCoolant}.
 */
public final class SlowCoolantTable {

    /** Flows of the table, in shares of the pump's largest flow [-]. */
    private static final double[] FLOW_SHARES = {0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1.0};

    /** Pump speeds of the comparison of passes, over rated speed [-]: idle, cruising, full speed. */
    private static final double[] PUMP_SPEEDS = {0.15, 0.5, 1.0};

    private static final OperatingPoint LIGHT = new OperatingPoint(
            "light", "Light load, 50 km/h on the level", 50 / 3.6, 0, 0, new Demand.Road(0, 500, 0.30), 0);

    private SlowCoolantTable() {}

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
        List<SlowCoolant.FlowLine> table = plant
                .radiator()
                .heatAgainstCoolantFlow(flows, air, airIn, plant.atmospherePa(), plant.coolant(), hot)
                .stream()
                .map(SlowCoolantTable::line)
                .toList();
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

    private static SlowCoolant.FlowLine line(FlowPoint p) {
        return new SlowCoolant.FlowLine(
                p.flowM3PerS(), p.heatW(), p.coolantDropK(), p.pressureDropPa(), p.tubeReynolds(), p.tubeRegime());
    }

    private static List<SlowCoolant.PassLine> passes(Plant plant, double hot, double airIn, double air) {
        List<SlowCoolant.PassLine> lines = new ArrayList<>();
        for (double speed : PUMP_SPEEDS) {
            double flowOfOne = 0;
            for (int n = 1; n <= 3; n++) {
                Plant with = Plant.of(plant.resolved().with(BuildField.CORE_PASSES, n), plant.factors());
                double flow = flow(with, speed, 1.0, hot).radiatorM3PerS();
                flowOfOne = n == 1 ? flow : flowOfOne;
                RadiatorPoint real = heat(with, air, airIn, flow, hot);
                lines.add(new SlowCoolant.PassLine(
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

    private static SlowCoolant.Thermostatted thermostatted(
            Plant plant, double pumpSpeed, double limitK, Resolved changed) {
        Plant warm = Plant.of(changed, plant.factors());
        Plant cold = Plant.of(changed.with(BuildField.AMBIENT, SlowCoolant.COLD_DAY_K), plant.factors());
        SteadySolver light = new SteadySolver(cold, LIGHT);
        Balance settled = light.solve();
        double left = -light.residualW(SlowCoolant.WARMING_K, SlowCoolant.COLD_DAY_K);
        double hot = Math.max(limitK, warm.thermostat().fullOpenK());
        CoolantFlow open = flow(warm, pumpSpeed, 1.0, hot);
        double pressure = HeadWall.pressurePa(warm.capPressurePa(), CapPosition.HOT_TANK, open);
        return new SlowCoolant.Thermostatted(
                settled instanceof Balance.Steady s ? s.engineOutK() : Double.NaN,
                settled instanceof Balance.Steady s ? s.oil().oilK() : Double.NaN,
                light.load().coolantW() - left,
                left,
                open.pumpM3PerS() > 0 ? open.bypassM3PerS() / open.pumpM3PerS() : 0,
                open.radiatorM3PerS(),
                pressure,
                warm.coolant().boilingK(pressure));
    }
}

package headertank.calc.rating;

import headertank.calc.air.AirBalance;
import headertank.calc.air.AirConditions;
import headertank.calc.air.AirCurvePoint;
import headertank.calc.air.AirFlow;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Range;
import java.util.ArrayList;
import java.util.List;

/**
 * The two pictures behind a steady state, with everything but the air flow held: pressure of core, fans and ram against
 * air flow, and heat of the radiator against air flow.
 *
 * @param air what the core takes and what drives it, by rising flow from 0
 * @param at the same at the steady state
 * @param heat heat of the radiator, by rising flow from 0
 * @param heatAt the same at the steady state
 */
public record CoolingCurves(List<AirCurvePoint> air, AirCurvePoint at, List<HeatPoint> heat, HeatPoint heatAt) {

    private static final int POINTS = 33;
    private static final Range AROUND_K = Range.of(223.15, 343);
    private static final Range CORE_AIR_K = Range.of(223.15, 500);

    /** The curves reach so far beyond the steady state [-]; modelling choice. */
    private static final double REACH = 1.8;

    public CoolingCurves {
        air = List.copyOf(air);
        heat = List.copyOf(heat);
    }

    /**
     * Heat of the radiator at one air flow.
     *
     * @param airMassKgPerS air through the core [kg/s]
     * @param heatW heat at the coolant's temperature in the steady state [W]
     * @param heatAtLimitW heat with the coolant at its limit [W]
     */
    public record HeatPoint(double airMassKgPerS, double heatW, double heatAtLimitW) {}

    /**
     * A steady state, as far as the curves need it.
     *
     * @param roadSpeedMPerS car speed [m/s]
     * @param yawRad sideslip angle [rad]
     * @param ambientK air around the car [K]
     * @param airInK air entering the core [K]
     * @param airOutK air leaving the core [K]
     * @param fanSpeedFactor fan speed over reference speed [-]
     * @param engineOutK coolant leaving the engine [K]
     * @param radiatorM3PerS coolant through the radiator [m3/s]
     */
    public record State(
            double roadSpeedMPerS,
            double yawRad,
            double ambientK,
            double airInK,
            double airOutK,
            double fanSpeedFactor,
            double engineOutK,
            double radiatorM3PerS) {}

    /** @return the curves of a car about one of its steady states */
    public static CoolingCurves of(Plant plant, State s) {
        AirBalance balance = plant.airPath().balance(plant.coreDrop(), plant.fan());
        double airInK = CORE_AIR_K.clamp(s.airInK());
        double airOutK = CORE_AIR_K.clamp(s.airOutK());
        balance.around(new AirConditions(
                s.roadSpeedMPerS(),
                s.yawRad(),
                plant.atmospherePa(),
                AROUND_K.clamp(s.ambientK()),
                airInK,
                airOutK,
                plant.moistDensityFactor()));
        balance.solve(airInK, airOutK, s.fanSpeedFactor());
        AirFlow flow = balance.flow();
        double most = REACH * Math.max(0.05, flow.shroudedM3PerS());
        double mostKg = REACH * Math.max(0.05, flow.massKgPerS());
        List<AirCurvePoint> air = new ArrayList<>();
        List<HeatPoint> heat = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            double share = i / (POINTS - 1.0);
            air.add(balance.curveAt(share * most));
            heat.add(heat(plant, s, airInK, share * mostKg));
        }
        return new CoolingCurves(
                air, balance.curveAt(flow.shroudedM3PerS()), heat, heat(plant, s, airInK, flow.massKgPerS()));
    }

    private static HeatPoint heat(Plant plant, State s, double airInK, double airKgPerS) {
        return new HeatPoint(
                airKgPerS,
                heatW(plant, s, airInK, airKgPerS, s.engineOutK()),
                heatW(plant, s, airInK, airKgPerS, plant.resolved().value(BuildField.COOLANT_LIMIT)));
    }

    private static double heatW(Plant plant, State s, double airInK, double airKgPerS, double coolantK) {
        return plant.radiator()
                .heat(airKgPerS, airInK, plant.atmospherePa(), s.radiatorM3PerS(), plant.coolant(), coolantK)
                .heatW();
    }
}

package headertank.calc.rating;

import headertank.calc.air.AirBalance;
import headertank.calc.air.AirConditions;
import headertank.calc.air.AirCurvePoint;
import headertank.calc.air.AirFlow;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Range;
import headertank.calc.result.CoolingCurves;
import java.util.ArrayList;
import java.util.List;

/** Draws the curves behind a steady state: everything but the air flow is held. */
public final class CurvesAround {

    private static final int POINTS = 33;
    private static final Range AROUND_K = Range.of(223.15, 343);
    private static final Range CORE_AIR_K = Range.of(223.15, 500);

    /** The curves reach so far beyond the steady state [-]; modelling choice. */
    private static final double REACH = 1.8;

    private CurvesAround() {}

    /** @return the curves of a car about one of its steady states */
    public static CoolingCurves of(Plant plant, CoolingCurves.State s) {
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
        List<CoolingCurves.AirPoint> air = new ArrayList<>();
        List<CoolingCurves.HeatPoint> heat = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            double share = i / (POINTS - 1.0);
            air.add(point(balance.curveAt(share * most)));
            heat.add(heat(plant, s, airInK, share * mostKg));
        }
        return new CoolingCurves(
                air, point(balance.curveAt(flow.shroudedM3PerS())), heat, heat(plant, s, airInK, flow.massKgPerS()));
    }

    private static CoolingCurves.HeatPoint heat(Plant plant, CoolingCurves.State s, double airInK, double airKgPerS) {
        return new CoolingCurves.HeatPoint(
                airKgPerS,
                heatW(plant, s, airInK, airKgPerS, s.engineOutK()),
                heatW(plant, s, airInK, airKgPerS, plant.resolved().value(BuildField.COOLANT_LIMIT)));
    }

    private static double heatW(Plant plant, CoolingCurves.State s, double airInK, double airKgPerS, double coolantK) {
        return plant.radiator()
                .heat(airKgPerS, airInK, plant.atmospherePa(), s.radiatorM3PerS(), plant.coolant(), coolantK)
                .heatW();
    }

    private static CoolingCurves.AirPoint point(AirCurvePoint p) {
        return new CoolingCurves.AirPoint(p.flowM3PerS(), p.corePa(), p.fanPa(), p.offeredPa());
    }
}

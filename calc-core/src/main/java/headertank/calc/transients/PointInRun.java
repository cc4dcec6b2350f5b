package headertank.calc.transients;

import headertank.calc.choice.OilCoolerPlace;
import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.oil.OilCoolers;
import headertank.calc.oil.OilSpec;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointLoad;
import headertank.calc.rating.SteadySolver;
import org.hipparchus.util.FastMath;

/** Everything about one operating point that does not change while a car stays at it. */
final class PointInRun extends Place {

    final String id;
    final CoolingTable table;
    final boolean fansMayRun;
    private final ColdHeat heat;
    private final Plant plant;
    private final boolean followsCore;
    private final OilCoolers.Driven oil;
    private final OilSpec still;

    PointInRun(Plant plant, OperatingPoint point) {
        super(plant);
        SteadySolver solver = new SteadySolver(plant, point);
        PointLoad load = solver.load();
        id = point.id();
        table = new CoolingTable(plant, solver);
        ambientK = solver.designAmbientK();
        surfaceWPerK = plant.surfaceWPerK(point.roadSpeedMPerS());
        Demand.EngineOff off = point.demand() instanceof Demand.EngineOff d ? d : null;
        engineOn = off == null;
        fansMayRun = engineOn || off.fansRunOn();
        hood = new HoodLoss(plant, ambientK, point.roadSpeedMPerS(), engineOn);
        heat = new ColdHeat(plant, point, load);
        double roadMPerS = point.roadSpeedMPerS() * Math.abs(FastMath.cos(point.yawRad()));
        this.plant = plant;
        followsCore = plant.oil().place() == OilCoolerPlace.BEFORE_CORE;
        oil = plant.oil().driven(load.engineSpeedPerS(), roadMPerS);
        still = oil.at(0);
        oilToCoolantWPerK = still.toCoolantWPerK();
        alternator(plant, load.engineSpeedPerS() / plant.engine().spec().idleSpeedPerS());
    }

    @Override
    Cooling cooling() {
        return table;
    }

    @Override
    double coolantW(double blockK, double oilK) {
        return heat.coolantW(blockK, oilK);
    }

    @Override
    double oilW(double blockK, double oilK) {
        return heat.oilW(blockK, oilK);
    }

    @Override
    double oilToAirW(double oilK, double coreAirWPerK) {
        OilSpec cooled = followsCore ? oil.at(plant.coreFaceMPerS(coreAirWPerK)) : still;
        double open = engineOn
                ? cooled.thermostat().openShare(oilK)
                : 1 - cooled.thermostat().governedShare();
        return cooled.toAirWPerK() * open * (oilK - ambientK);
    }
}

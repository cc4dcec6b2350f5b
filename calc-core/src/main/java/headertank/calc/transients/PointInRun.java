package headertank.calc.transients;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.OilCoolerPlace;
import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.electric.ElectricBalance;
import headertank.calc.oil.OilCoolers;
import headertank.calc.oil.OilSpec;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointLoad;
import headertank.calc.rating.SteadySolver;
import org.hipparchus.util.FastMath;

/** Everything about one operating point that does not change while a car stays at it. */
final class PointInRun {

    /** Share of the base load that is left with the engine off; modelling choice. */
    private static final double BASE_LOAD_OFF = 0.1;

    /** Heat that hot exhaust and head still give when the engine stops, at 450 kW, guessed [W]. */
    private static final double SOAK_W = 1500;

    private static final double SOAK_DECAY_S = 300;
    private static final double SOAK_AT_W = 450e3;

    final String id;
    final CoolingTable table;
    final HoodLoss hood;
    final boolean engineOn;
    final boolean fansMayRun;
    final double ambientK;
    final double surfaceWPerK;
    private final ColdHeat heat;
    final double oilToCoolantWPerK;
    private final Plant plant;
    private final boolean followsCore;
    private final OilCoolers.Driven oil;
    private final OilSpec still;
    final double supplyA;
    final double baseLoadA;
    final double runningA;
    private final double soakW;

    PointInRun(Plant plant, OperatingPoint point) {
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
        double overIdle =
                Math.min(50, load.engineSpeedPerS() / plant.engine().spec().idleSpeedPerS());
        supplyA = plant.alternator().outputA(overIdle);
        baseLoadA = plant.alternator().baseLoadA() * (engineOn ? 1 : BASE_LOAD_OFF);
        runningA = plant.fanRunningA();
        soakW = engineOn ? 0 : SOAK_W * plant.resolved().value(BuildField.ENGINE_POWER) / SOAK_AT_W;
    }

    /** @return heat into the coolant at these temperatures of coolant in the block and oil [W] */
    double coolantW(double blockK, double oilK) {
        return heat.coolantW(blockK, oilK);
    }

    /** @return heat into the oil likewise [W] */
    double oilW(double blockK, double oilK) {
        return heat.oilW(blockK, oilK);
    }

    /**
     * @param coreAirWPerK heat capacity rate of the air through the core [W/K]
     * @return heat that the air takes from the oil; with the engine off no oil passes the air cooler, only the sump is left [W]
     */
    double oilToAirW(double oilK, double coreAirWPerK) {
        OilSpec cooled = followsCore ? oil.at(plant.coreFaceMPerS(coreAirWPerK)) : still;
        double open = engineOn
                ? cooled.thermostat().openShare(oilK)
                : 1 - cooled.thermostat().governedShare();
        return cooled.toAirWPerK() * open * (oilK - ambientK);
    }

    /** @return heat from hot ports and exhaust into the head's coolant, 0 with the engine on; falls with 300 s (guessed) [W] */
    double soakW(double sinceOffS) {
        return engineOn ? 0 : soakW * FastMath.exp(-sinceOffS / SOAK_DECAY_S);
    }

    /** @return fan speed over that at charging voltage for this duty [-] */
    double fanSpeedFactor(double duty) {
        return ElectricBalance.fanSpeedFactor(supplyA - baseLoadA, runningA * duty * duty);
    }

    /** @return current of all electric fans [A] */
    double fanCurrentA(double duty, double inrush) {
        double factor = fanSpeedFactor(duty);
        return inrush * runningA * duty * duty * factor * factor;
    }
}

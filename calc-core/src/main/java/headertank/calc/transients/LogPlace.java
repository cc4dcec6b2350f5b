package headertank.calc.transients;

import headertank.calc.engine.ColdEngine;
import headertank.calc.engine.EngineHeat;
import headertank.calc.engine.HeatSplit;
import headertank.calc.fluid.Fuel;
import headertank.calc.oil.OilCoolers;
import headertank.calc.oil.OilSpec;
import headertank.calc.rating.Plant;
import java.util.HashMap;
import java.util.Map;
import org.hipparchus.util.FastMath;

/**
 * What a log says of a moment: its engine breathes what its manifold holds, {@code m = VE n/2 V p/(R T)}, R T of the intake air, and
 * releases what burns with that air at lambda 1 or richer; from there the shares of {@link EngineHeat}. VE, 0.92 with the throttle
 * open and less behind it ({@link LogStretches}), is a modelling choice; its factor is learned.
 */
final class LogPlace extends Place {

    private static final double VOLUMETRIC_EFFICIENCY = 0.92;
    private static final double AIR_J_PER_KG_K = 287.05;
    private static final double COMBUSTION = 0.98;
    private static final int SECANTS = 5;
    private static final double SETTLED = 1e-4;
    private static final double[] HOOD_M_PER_S = {0, 5, 12, 25, 45};

    private final Plant plant;
    private final Map<Double, CoolingGrid> grids = new HashMap<>();
    private CoolingGrid grid;
    private final HoodLoss[] hoods = new HoodLoss[2 * HOOD_M_PER_S.length];
    private final double releasedPerKg;
    private final LogReplay.Day day;
    private OilCoolers.Driven oil;
    private double coolantW;
    private double coolantPerFrictionW;
    private double oilW;
    private double oilPerFrictionW;

    LogPlace(Plant plant, double ambientK, LogReplay.Day day) {
        super(plant);
        if (plant.engine().spec().engineClass().isDiesel()) {
            throw new IllegalArgumentException(
                    "a diesel breathes the same at any load: its manifold pressure does not say how much heat it gives");
        }
        this.plant = plant;
        this.ambientK = ambientK;
        this.day = day;
        Fuel fuel = plant.engine().spec().fuel();
        this.releasedPerKg = COMBUSTION * fuel.lowerHeatingValueJPerKg() / fuel.stoichiometricAirFuelRatio();
    }

    /** Goes to a stretch of a log. */
    void to(LogStretches.Stretch s) {
        engineOn = s.enginePerS() > 0;
        double air = FastMath.hypot(s.roadMPerS(), day.breezeMPerS());
        grid = grids.computeIfAbsent(s.yawRad(), yaw -> new CoolingGrid(plant, ambientK, yaw));
        grid.to(air, s.enginePerS());
        surfaceWPerK = plant.surfaceWPerK(air);
        hood = hood(s.roadMPerS());
        oil = plant.oil().driven(s.enginePerS(), s.roadMPerS());
        oilToCoolantWPerK = oil.at(0).toCoolantWPerK();
        alternator(plant, s.enginePerS() / plant.engine().spec().idleSpeedPerS());
        coolantW = 0;
        coolantPerFrictionW = 0;
        oilW = 0;
        oilPerFrictionW = 0;
        if (engineOn) {
            heat(s);
        }
    }

    private void heat(LogStretches.Stretch s) {
        EngineHeat engine = plant.engine();
        double speed = Math.min(s.enginePerS(), 1.29 * engine.spec().ratedSpeedPerS());
        double air = VOLUMETRIC_EFFICIENCY
                * plant.factors().metal().charge()
                * engine.spec().displacementM3()
                / 2
                * s.breathedPaPerKs()
                / AIR_J_PER_KG_K;
        double released = air * releasedPerKg;
        HeatSplit idle = engine.at(0, speed);
        HeatSplit split = released > idle.releasedW() ? burning(engine, released, speed, idle) : idle;
        double share = day.load() * Math.min(1, released / idle.releasedW());
        coolantW = share * split.coolantW();
        oilW = share * split.oilW();
        // What a fuelless engine gives off is what rubs; cold oil rubs more, and at the same fuel takes it from the
        // shaft.
        HeatSplit rubs = engine.overrun(speed);
        coolantPerFrictionW = rubs.coolantW();
        oilPerFrictionW = rubs.oilW();
    }

    /** The balance that releases so much heat: released heat is nearly a straight line of brake power, so secants find it. */
    private static HeatSplit burning(EngineHeat engine, double releasedW, double speedPerS, HeatSplit idle) {
        double most = 1.5 * engine.spec().ratedPowerW();
        double before = 0;
        double atBefore = idle.releasedW() - releasedW;
        double brake = Math.min(most, 0.35 * (releasedW - idle.releasedW()));
        HeatSplit split = engine.at(brake, speedPerS);
        for (int turn = 0; turn < SECANTS; turn++) {
            double at = split.releasedW() - releasedW;
            if (Math.abs(at) < SETTLED * releasedW || brake == before || at == atBefore) {
                break;
            }
            double next = Math.max(0, Math.min(most, brake - at * (brake - before) / (at - atBefore)));
            before = brake;
            atBefore = at;
            brake = next;
            split = engine.at(brake, speedPerS);
        }
        return split;
    }

    /** @return heat of the warm engine into its coolant [W] */
    double warmCoolantW() {
        return coolantW;
    }

    private HoodLoss hood(double roadMPerS) {
        int i = 0;
        while (i < HOOD_M_PER_S.length - 1 && roadMPerS > 0.5 * (HOOD_M_PER_S[i] + HOOD_M_PER_S[i + 1])) {
            i++;
        }
        int key = 2 * i + (engineOn ? 1 : 0);
        if (hoods[key] == null) {
            hoods[key] = new HoodLoss(plant, ambientK, HOOD_M_PER_S[i], engineOn);
        }
        return hoods[key];
    }

    @Override
    Cooling cooling() {
        return grid;
    }

    @Override
    double coolantW(double blockK, double oilK) {
        return (coolantW + coolantPerFrictionW * (ColdEngine.friction(oilK) - 1)) * ColdEngine.wallHeat(blockK);
    }

    @Override
    double oilW(double blockK, double oilK) {
        return oilW + oilPerFrictionW * (ColdEngine.friction(oilK) - 1);
    }

    @Override
    double oilToAirW(double oilK, double coreAirWPerK) {
        OilSpec cooled = oil.at(plant.coreFaceMPerS(coreAirWPerK));
        double open = engineOn
                ? cooled.thermostat().openShare(oilK)
                : 1 - cooled.thermostat().governedShare();
        return cooled.toAirWPerK() * open * (oilK - ambientK);
    }
}

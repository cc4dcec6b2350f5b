package headertank.calc.transients;

import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.rating.Plant;
import headertank.calc.rating.SteadySolver;
import java.util.Arrays;
import java.util.List;

/**
 * The cooling of a car at any speed of road and engine: tables at a few of each, made when first needed, straight between them. Not
 * thread-safe; each replay makes its own.
 */
final class CoolingGrid extends Cooling {

    private static final double[] ROAD_M_PER_S = {0, 2, 5, 9, 15, 24, 36, 60, 110};

    /** Closer together where the thermostat is nearly shut: what it leaks is learned. */
    private static final double[] LIFT = {0.001, 0.003, 0.006, 0.010, 0.016, 0.025, 0.05, 0.10, 0.20, 0.35, 0.60, 1.0};

    /** Engine speeds over the idle speed. */
    private static final double[] OVER_IDLE = {0.6, 1, 1.5, 2.2, 3.2, 4.7, 7, 11};

    /** A load that decides nothing about the cooling but what a charge cooler in front of the core gives off [-]. */
    private static final double POWER_SHARE = 0.2;

    private final Plant plant;
    private final double yawRad;
    private final double idlePerS;
    private final CoolingTable[] running = new CoolingTable[ROAD_M_PER_S.length * OVER_IDLE.length];
    private final CoolingTable[] standing = new CoolingTable[ROAD_M_PER_S.length];
    private int road;
    private int engine;
    private double roadWeight;
    private double engineWeight;
    private boolean on;

    /** @param yawRad angle between the car's nose and the way it travels [rad] */
    CoolingGrid(Plant plant, double ambientK, double yawRad) {
        super(ambientK);
        this.yawRad = yawRad;
        this.plant = plant;
        this.idlePerS = plant.engine().spec().idleSpeedPerS();
    }

    /** Goes to these speeds, the engine standing at 0 [m/s], [rev/s]. */
    void to(double roadMPerS, double enginePerS) {
        on = enginePerS > 0;
        road = place(ROAD_M_PER_S, roadMPerS);
        roadWeight = weight(ROAD_M_PER_S, road, roadMPerS);
        engine = on ? place(OVER_IDLE, enginePerS / idlePerS) : 0;
        engineWeight = on ? weight(OVER_IDLE, engine, enginePerS / idlePerS) : 0;
    }

    @Override
    void at(double hotK, double lift, double duty) {
        Arrays.fill(out, 0);
        add(road, engine, (1 - roadWeight) * (1 - engineWeight), hotK, lift, duty);
        add(road + 1, engine, roadWeight * (1 - engineWeight), hotK, lift, duty);
        add(road, engine + 1, (1 - roadWeight) * engineWeight, hotK, lift, duty);
        add(road + 1, engine + 1, roadWeight * engineWeight, hotK, lift, duty);
    }

    private void add(int atRoad, int atEngine, double weight, double hotK, double lift, double duty) {
        if (weight > 0) {
            CoolingTable table = table(atRoad, atEngine);
            table.at(hotK, lift, duty);
            for (int i = 0; i < QUANTITIES; i++) {
                out[i] += weight * table.out[i];
            }
        }
    }

    @Override
    void settleAt(double hotK, double lift, double duty) {
        // Between tables nothing is exact.
    }

    private CoolingTable table(int atRoad, int atEngine) {
        CoolingTable[] tables = on ? running : standing;
        int key = on ? atRoad * OVER_IDLE.length + atEngine : atRoad;
        if (tables[key] == null) {
            double share = Math.min(
                    1.2, OVER_IDLE[atEngine] * idlePerS / plant.engine().spec().ratedSpeedPerS());
            Demand demand = on
                    ? new Demand.Mix(List.of(new Demand.Mode(1, POWER_SHARE, share)), share)
                    : new Demand.EngineOff(0, true);
            double speed = Math.min(90, ROAD_M_PER_S[atRoad]);
            tables[key] = new CoolingTable(
                    plant,
                    new SteadySolver(plant, new OperatingPoint("log", "log", speed, yawRad, 0, demand, 0)),
                    LIFT);
        }
        return tables[key];
    }

    private static int place(double[] axis, double value) {
        int i = 0;
        while (i < axis.length - 2 && value >= axis[i + 1]) {
            i++;
        }
        return i;
    }

    private static double weight(double[] axis, int i, double value) {
        return Math.max(0, Math.min(1, (value - axis[i]) / (axis[i + 1] - axis[i])));
    }
}

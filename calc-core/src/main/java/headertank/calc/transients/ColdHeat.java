package headertank.calc.transients;

import headertank.calc.duty.OperatingPoint;
import headertank.calc.engine.ColdEngine;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointLoad;

/**
 * Heat into coolant and oil of a car at one operating point against the temperatures of block and oil: {@link PointLoad} at a
 * few of each, straight between them, made when first needed; from {@link ColdEngine#WARM_K} on that of the warm engine. Not
 * thread-safe.
 */
final class ColdHeat {

    private static final double STEP_K = 20;
    private static final int NODES = 8;

    private final Plant plant;
    private final OperatingPoint point;
    private final double warmCoolantW;
    private final double warmOilW;
    private double[][] nodes;

    ColdHeat(Plant plant, OperatingPoint point, PointLoad warm) {
        this.plant = plant;
        this.point = point;
        this.warmCoolantW = warm.coolantW();
        this.warmOilW = warm.oilW();
    }

    double coolantW(double blockK, double oilK) {
        return isWarm(blockK, oilK) ? warmCoolantW : between(blockK, oilK, 0);
    }

    double oilW(double blockK, double oilK) {
        return isWarm(blockK, oilK) ? warmOilW : between(blockK, oilK, 1);
    }

    private boolean isWarm(double blockK, double oilK) {
        return blockK >= ColdEngine.WARM_K && oilK >= ColdEngine.WARM_K || point.engineOff();
    }

    private double between(double blockK, double oilK, int which) {
        double b = steps(blockK);
        double o = steps(oilK);
        int i = (int) Math.min(NODES - 2, b);
        int j = (int) Math.min(NODES - 2, o);
        double wb = b - i;
        double wo = o - j;
        double near = (1 - wo) * node(i, j)[which] + wo * node(i, j + 1)[which];
        double far = (1 - wo) * node(i + 1, j)[which] + wo * node(i + 1, j + 1)[which];
        return (1 - wb) * near + wb * far;
    }

    private static double steps(double kelvin) {
        return Math.max(0, Math.min(NODES - 1, (ColdEngine.WARM_K - kelvin) / STEP_K));
    }

    private double[] node(int block, int oil) {
        if (nodes == null) {
            nodes = new double[NODES * NODES][];
        }
        int key = block * NODES + oil;
        if (nodes[key] == null) {
            PointLoad load =
                    PointLoad.of(plant, point, ColdEngine.WARM_K - STEP_K * block, ColdEngine.WARM_K - STEP_K * oil);
            nodes[key] = new double[] {load.coolantW(), load.oilW()};
        }
        return nodes[key];
    }
}

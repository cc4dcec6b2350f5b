package headertank.calc.transients;

import headertank.calc.rating.CoolingState;
import headertank.calc.rating.SteadySolver;
import java.util.Arrays;

/**
 * The cooling of a car at one operating point, interpolated between states that are solved when first needed: lift, fan
 * duty and coolant temperature are its axes. Air temperatures are kept as shares of the difference between coolant and
 * ambient, so that they scale inside a cell, and beyond the hottest coolant that the steady solver tries. Not thread-safe; each run makes its own.
 */
final class CoolingTable {

    private static final double[] LIFT = {0.012, 0.025, 0.05, 0.10, 0.20, 0.35, 0.60, 1.0};
    private static final double[] DUTY = {0, 0.25, 0.5, 0.75, 1.0};
    private static final double FIRST_K = 5;
    private static final double STEP_K = 10;
    private static final int QUANTITIES = 9;

    private final SteadySolver solver;
    private final double ambientK;
    private final int lastNode;
    private final double[][] nodes;
    private final double[] out = new double[QUANTITIES];

    CoolingTable(SteadySolver solver) {
        this.solver = solver;
        this.ambientK = solver.designAmbientK();
        this.lastNode = (int) Math.floor((SteadySolver.HOTTEST_K - ambientK - FIRST_K) / STEP_K);
        this.nodes = new double[LIFT.length * DUTY.length * (lastNode + 1)][];
    }

    double ambientK() {
        return ambientK;
    }

    SteadySolver solver() {
        return solver;
    }

    /**
     * Looks the state up; read it with the accessors until the next look-up.
     *
     * @param hotK coolant in the block [K]
     * @param lift thermostat lift [-]
     * @param duty duty of electric fans [-]
     */
    void at(double hotK, double lift, double duty) {
        int l = place(LIFT, lift);
        double wl = weight(LIFT, l, lift);
        int d = place(DUTY, duty);
        double wd = weight(DUTY, d, duty);
        double steps = Math.max(0, (hotK - ambientK - FIRST_K) / STEP_K);
        int t = (int) Math.min(lastNode - 1, Math.floor(steps));
        double wt = Math.min(1, steps - t);
        Arrays.fill(out, 0);
        for (int corner = 0; corner < 8; corner++) {
            double w = ((corner & 1) == 0 ? 1 - wl : wl)
                    * ((corner & 2) == 0 ? 1 - wd : wd)
                    * ((corner & 4) == 0 ? 1 - wt : wt);
            if (w > 0) {
                double[] node = node(l + (corner & 1), d + (corner >> 1 & 1), t + (corner >> 2 & 1));
                for (int i = 0; i < QUANTITIES; i++) {
                    out[i] += w * node[i];
                }
            }
        }
    }

    private double[] node(int l, int d, int t) {
        int key = (l * DUTY.length + d) * (lastNode + 1) + t;
        double[] node = nodes[key];
        if (node == null) {
            double hot = ambientK + FIRST_K + STEP_K * t;
            CoolingState s = solver.cooling(hot, ambientK, LIFT[l], DUTY[d]);
            double span = hot - ambientK;
            double e = s.coolantEffectiveness();
            node = new double[] {
                s.capacityRateWPerK(),
                s.capacityRateWPerK() * e / (1 - e),
                (s.airInK() - ambientK) / span,
                (s.underHoodK() - ambientK) / span,
                s.pumpM3PerS(),
                s.radiatorM3PerS(),
                s.fanCurrentA(),
                s.deficitA(),
                s.fanDuty()
            };
            nodes[key] = node;
        }
        return node;
    }

    /** @return heat capacity rate of the coolant through the radiator [W/K] */
    double capacityRateWPerK() {
        return out[0];
    }

    /** @return radiator heat over the difference of radiator outlet and air inlet [W/K] */
    double outletConductanceWPerK() {
        return out[1];
    }

    /** @return air entering the core at this coolant temperature [K] */
    double airInK(double hotK) {
        return ambientK + out[2] * (hotK - ambientK);
    }

    /** @return air under the hood at this coolant temperature [K] */
    double underHoodK(double hotK) {
        return ambientK + out[3] * (hotK - ambientK);
    }

    double pumpM3PerS() {
        return out[4];
    }

    double radiatorM3PerS() {
        return out[5];
    }

    double fanCurrentA() {
        return out[6];
    }

    double deficitA() {
        return out[7];
    }

    double fanDuty() {
        return out[8];
    }

    private static int place(double[] axis, double value) {
        int i = 0;
        while (i < axis.length - 2 && value >= axis[i + 1]) {
            i++;
        }
        return i;
    }

    private static double weight(double[] axis, int i, double value) {
        double w = (value - axis[i]) / (axis[i + 1] - axis[i]);
        return Math.max(0, Math.min(1, w));
    }
}

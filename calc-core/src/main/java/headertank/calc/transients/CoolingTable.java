package headertank.calc.transients;

import headertank.calc.coolant.Thermostat;
import headertank.calc.coolant.ThermostatSpec;
import headertank.calc.rating.CoolingState;
import headertank.calc.rating.Plant;
import headertank.calc.rating.SteadySolver;
import java.util.Arrays;
import org.hipparchus.util.FastMath;

/**
 * The cooling of a car at one operating point, interpolated between states that are solved when first needed: lift, fan
 * duty and coolant temperature are its axes. Where the car settles, one state is solved exactly and what the table misses
 * there is added around it, so that the end of a long stay is that of the steady solver. Not thread-safe; each run makes
 * its own.
 */
final class CoolingTable extends Cooling {

    private static final double[] LIFT = {
        ThermostatSpec.LEAK.min(), Thermostat.LEAK_LIFT, 0.025, 0.05, 0.10, 0.20, 0.35, 0.60, 1.0
    };
    private static final double[] DUTY = {0, 0.25, 0.5, 0.75, 1.0};
    private static final double FIRST_K = 5;
    private static final double STEP_K = 10;

    /** How far around an exact state its correction reaches. */
    private static final double REACH_K = 3;

    private static final double REACH_DUTY = 0.15;
    private static final double REACH_LIFT_SHARE = 0.4;

    /** A correction is made anew when the car has moved this far from the state that it was made at. */
    private static final double STALE_K = 0.2;

    private static final double STALE_DUTY = 0.01;
    private static final double STALE_LIFT_SHARE = 0.03;

    private final double[] lifts;
    private final SteadySolver solver;
    private final Plant plant;
    private final int lastStep;
    private final double[][] nodes;
    private final double[] missing = new double[QUANTITIES];
    private double exactK = Double.NaN;
    private double exactLift;
    private double exactDuty;

    CoolingTable(Plant plant, SteadySolver solver) {
        this(plant, solver, LIFT);
    }

    /** @param lifts axis of the thermostat's lift, rising to 1 [-] */
    CoolingTable(Plant plant, SteadySolver solver, double[] lifts) {
        super(solver.designAmbientK());
        this.lifts = lifts;
        this.plant = plant;
        this.solver = solver;
        this.lastStep = (int) Math.floor((SteadySolver.HOTTEST_K - ambientK - FIRST_K) / STEP_K) - 1;
        this.nodes = new double[lifts.length * DUTY.length * (lastStep + 2)][];
    }

    @Override
    void at(double hotK, double lift, double duty) {
        interpolate(hotK, lift, duty);
        if (exactK == exactK) {
            double k = (hotK - exactK) / REACH_K;
            double d = (duty - exactDuty) / REACH_DUTY;
            double l = (lift - exactLift) / (REACH_LIFT_SHARE * exactLift);
            double w = 1 / (1 + k * k + d * d + l * l);
            for (int i = 0; i < QUANTITIES; i++) {
                out[i] += w * missing[i];
            }
        }
    }

    /** Solves this state exactly, unless it was, and corrects the table around it. */
    @Override
    void settleAt(double hotK, double lift, double duty) {
        if (Math.abs(hotK - exactK) < STALE_K
                && Math.abs(duty - exactDuty) < STALE_DUTY
                && Math.abs(lift - exactLift) < STALE_LIFT_SHARE * exactLift) {
            return;
        }
        double[] exact = solved(hotK, lift, duty);
        interpolate(hotK, lift, duty);
        for (int i = 0; i < QUANTITIES; i++) {
            missing[i] = exact[i] - out[i];
        }
        exactK = hotK;
        exactLift = lift;
        exactDuty = duty;
    }

    private void interpolate(double hotK, double lift, double duty) {
        int l = place(lifts, lift);
        double wl = weight(lifts, l, lift);
        int d = place(DUTY, duty);
        double wd = weight(DUTY, d, duty);
        double steps = Math.max(0, (hotK - ambientK - FIRST_K) / STEP_K);
        int t = (int) Math.min(lastStep, steps);
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
        int key = (l * DUTY.length + d) * (lastStep + 2) + t;
        double[] node = nodes[key];
        if (node == null) {
            node = solved(ambientK + FIRST_K + STEP_K * t, lifts[l], DUTY[d]);
            nodes[key] = node;
        }
        return node;
    }

    private double[] solved(double hotK, double lift, double duty) {
        CoolingState s = solver.cooling(hotK, ambientK, lift, duty);
        double c = s.capacityRateWPerK();
        return new double[] {
            c,
            -c * FastMath.log1p(-Math.max(0, s.coolantEffectiveness())),
            s.airInK() - ambientK,
            s.underHoodK() - ambientK,
            s.radiatorM3PerS(),
            s.fanDuty(),
            s.airSideShare(),
            Math.max(0, s.airCapacityWPerK()),
            Masses.metalConductanceWPerK(plant, s.pumpM3PerS())
        };
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

package headertank.calc.transients;

import headertank.calc.rating.Margin;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/**
 * The hottest coolant and oil of a run, all that a sampled run is asked for. Where the coolant turns inside a step, its peak
 * is that of the cubic through both ends and their slopes. Has the cooling solved exactly where the car settles.
 */
final class Peaks implements ODEStepHandler {

    /** Below this the car counts as settling [K/s]. */
    private static final double STEADY_K_PER_S = 0.004;

    private final LumpedCar car;
    private int steps;
    private double coolantK;
    private double coolantAtS;
    private double oilK;
    private double inStepK;

    Peaks(LumpedCar car, double[] start) {
        this.car = car;
        this.coolantK = start[LumpedCar.BLOCK];
        this.oilK = start[LumpedCar.OIL];
    }

    @Override
    public void handleStep(ODEStateInterpolator step) {
        ODEStateAndDerivative from = step.getPreviousState();
        ODEStateAndDerivative to = step.getCurrentState();
        step(
                from.getTime(),
                from.getPrimaryState(),
                from.getPrimaryDerivative(),
                to.getTime(),
                to.getPrimaryState(),
                to.getPrimaryDerivative());
    }

    /** One accepted step: time [s], state and slope at both ends. */
    void step(double t0, double[] y0, double[] slope0, double t1, double[] y, double[] slope) {
        steps++;
        inStepK = y[LumpedCar.BLOCK];
        double at = t1;
        double before = slope0[LumpedCar.BLOCK];
        if (slope[LumpedCar.BLOCK] < 0 && before > 0) {
            double h = t1 - t0;
            double start = y0[LumpedCar.BLOCK];
            double x = turn((y[LumpedCar.BLOCK] - start) / h, before, slope[LumpedCar.BLOCK]);
            inStepK = between(x, h, start, before, y[LumpedCar.BLOCK], slope[LumpedCar.BLOCK]);
            at = t0 + x * h;
        }
        if (inStepK > coolantK) {
            coolantK = inStepK;
            coolantAtS = at;
        }
        oilK = Math.max(oilK, y[LumpedCar.OIL]);
        if (Math.abs(slope[LumpedCar.BLOCK]) < STEADY_K_PER_S && Math.abs(slope[LumpedCar.RADIATOR]) < STEADY_K_PER_S) {
            car.settleAt(t1, y);
        }
    }

    /** Where the cubic's slope d0 (1-x)(1-3x) + 6 m x (1-x) + d1 x (3x-2) passes 0 from above, 0 to 1. */
    private static double turn(double m, double d0, double d1) {
        double a = 3 * (d0 + d1) - 6 * m;
        double b = 6 * m - 4 * d0 - 2 * d1;
        double root = Math.sqrt(Math.max(0, b * b - 4 * a * d0));
        double x = 2 * d0 / (root - b);
        return x >= 0 && x <= 1 ? x : 1;
    }

    private static double between(double x, double h, double y0, double d0, double y1, double d1) {
        double u = 1 - x;
        return (1 + 2 * x) * u * u * y0 + x * u * u * h * d0 + x * x * (3 - 2 * x) * y1 - x * x * u * h * d1;
    }

    int steps() {
        return steps;
    }

    RunResult.Peaks result(Plant plant) {
        return new RunResult.Peaks(coolantK, coolantAtS, oilK, Margin.boilingK(plant.boilingK(), coolantK));
    }

    /** @return hottest coolant of the last step [K] */
    double inStepK() {
        return inStepK;
    }
}

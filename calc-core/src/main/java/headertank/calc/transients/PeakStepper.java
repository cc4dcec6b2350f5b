package headertank.calc.transients;

import org.hipparchus.util.FastMath;

/**
 * The method of a sampled run: the same pair of order 5(4), tolerance and step control as the integrator of a full run, in
 * place and without an object per step. Not thread-safe; each run makes its own.
 *
 * @see "J. R. Dormand, P. J. Prince, A family of embedded Runge-Kutta formulae, J. Comput. Appl. Math. 6 (1980) 19-26 (from
 *     memory); a test compares it with the library's"
 */
final class PeakStepper {

    private static final int N = LumpedCar.STATES;

    /** States whose error is looked at; the sums behind them follow. */
    private static final int CONTROLLED = LumpedCar.IN_J;

    private static final double SAFETY = 0.9;
    private static final double LEAST_FACTOR = 0.2;
    private static final double MOST_FACTOR = 10;
    private static final double CHECK_S = 1;
    private static final double EDGE_K = 1e-7;
    private static final int EDGE_TURNS = 8;

    private final LumpedCar car;
    private final Peaks peaks;
    private final double toleranceK;
    private final double longestS;
    private final double shortestS;
    private final double[][] k = new double[7][N];
    private final double[] next = new double[N];
    private int hit;
    private double edgeErrorK;

    PeakStepper(LumpedCar car, Peaks peaks, double toleranceK, double shortestS, double longestS) {
        this.car = car;
        this.peaks = peaks;
        this.toleranceK = toleranceK;
        this.shortestS = shortestS;
        this.longestS = longestS;
    }

    /** @return 1 when the last advance ended at the upper edge, -1 at the lower one, else 0 */
    int hit() {
        return hit;
    }

    /** @return distance of the reading from that edge [K] */
    double edgeErrorK() {
        return edgeErrorK;
    }

    /**
     * @param from time [s]
     * @param y state there; becomes the state where it stops
     * @param until when to stop at the latest [s]
     * @param firstS first step to try [s]
     * @param upK edge of the fan sensor's reading upwards, may be infinite [K]
     * @param downK the same downwards [K]
     * @return when it stopped [s]
     */
    double advance(double from, double[] y, double until, double firstS, double upK, double downK) {
        hit = 0;
        double t = from;
        double h = firstS;
        car.derivatives(t, y, k[0]);
        while (t < until) {
            boolean last = t + h >= until - shortestS;
            double step = last ? until - t : h;
            stages(t, y, step);
            double error = error(step);
            double factor =
                    Math.min(MOST_FACTOR, Math.max(LEAST_FACTOR, SAFETY * FastMath.pow(Math.max(error, 1e-10), -0.2)));
            h = Math.max(shortestS, Math.min(longestS, step * factor));
            if (error > 1 && step > shortestS) {
                continue;
            }
            double share = edge(y, step, upK, downK);
            if (hit != 0) {
                step = settleAtEdge(t, y, step, share, hit > 0 ? upK : downK);
            }
            double end = last && hit == 0 ? until : t + step;
            peaks.step(t, y, k[0], end, next, k[6]);
            System.arraycopy(next, 0, y, 0, N);
            System.arraycopy(k[6], 0, k[0], 0, N);
            t = end;
            if (hit != 0) {
                return t;
            }
        }
        return t;
    }

    /** The six stages, the last at the end of the step; written out so that each loop is one pass over plain arrays. */
    private void stages(double t, double[] y, double h) {
        double[] k1 = k[0];
        double[] k2 = k[1];
        double[] k3 = k[2];
        double[] k4 = k[3];
        double[] k5 = k[4];
        double[] k6 = k[5];
        for (int i = 0; i < N; i++) {
            next[i] = y[i] + h * (1.0 / 5 * k1[i]);
        }
        car.derivatives(t + h / 5, next, k2);
        for (int i = 0; i < N; i++) {
            next[i] = y[i] + h * (3.0 / 40 * k1[i] + 9.0 / 40 * k2[i]);
        }
        car.derivatives(t + 0.3 * h, next, k3);
        for (int i = 0; i < N; i++) {
            next[i] = y[i] + h * (44.0 / 45 * k1[i] - 56.0 / 15 * k2[i] + 32.0 / 9 * k3[i]);
        }
        car.derivatives(t + 0.8 * h, next, k4);
        for (int i = 0; i < N; i++) {
            next[i] = y[i]
                    + h
                            * (19372.0 / 6561 * k1[i]
                                    - 25360.0 / 2187 * k2[i]
                                    + 64448.0 / 6561 * k3[i]
                                    - 212.0 / 729 * k4[i]);
        }
        car.derivatives(t + 8.0 / 9 * h, next, k5);
        for (int i = 0; i < N; i++) {
            next[i] = y[i]
                    + h
                            * (9017.0 / 3168 * k1[i]
                                    - 355.0 / 33 * k2[i]
                                    + 46732.0 / 5247 * k3[i]
                                    + 49.0 / 176 * k4[i]
                                    - 5103.0 / 18656 * k5[i]);
        }
        car.derivatives(t + h, next, k6);
        for (int i = 0; i < N; i++) {
            next[i] = y[i]
                    + h
                            * (35.0 / 384 * k1[i]
                                    + 500.0 / 1113 * k3[i]
                                    + 125.0 / 192 * k4[i]
                                    - 2187.0 / 6784 * k5[i]
                                    + 11.0 / 84 * k6[i]);
        }
        car.derivatives(t + h, next, k[6]);
    }

    private double error(double step) {
        double[] k1 = k[0];
        double[] k3 = k[2];
        double[] k4 = k[3];
        double[] k5 = k[4];
        double[] k6 = k[5];
        double[] k7 = k[6];
        double scale = step / toleranceK;
        double sum = 0;
        for (int i = 0; i < CONTROLLED; i++) {
            double e = scale
                    * (71.0 / 57600 * k1[i]
                            - 71.0 / 16695 * k3[i]
                            + 71.0 / 1920 * k4[i]
                            - 17253.0 / 339200 * k5[i]
                            + 22.0 / 525 * k6[i]
                            - 1.0 / 40 * k7[i]);
            sum += e * e;
        }
        return Math.sqrt(sum / N);
    }

    /** Looks for the first edge that the reading passes inside the step; sets {@link #hit}. @return where, share of the step */
    private double edge(double[] y, double step, double upK, double downK) {
        hit = 0;
        int s = car.fanSensor();
        int parts = (int) Math.max(1, Math.ceil(step / CHECK_S));
        double before = y[s];
        for (int i = 1; i <= parts; i++) {
            double x = (double) i / parts;
            double now = i == parts ? next[s] : reading(x, step, y[s], next[s]);
            if (before < upK && now >= upK || before > downK && now <= downK) {
                hit = before < upK && now >= upK ? 1 : -1;
                double at = hit > 0 ? upK : downK;
                return (i - 1 + (at - before) / (now - before)) / parts;
            }
            before = now;
        }
        return 1;
    }

    /** The cubic through both ends of the step and their slopes. */
    private double reading(double x, double step, double y0, double y1) {
        int s = car.fanSensor();
        double u = 1 - x;
        return (1 + 2 * x) * u * u * y0
                + x * u * u * step * k[0][s]
                + x * x * (3 - 2 * x) * y1
                - x * x * u * step * k[6][s];
    }

    /** Takes the step anew, shorter, until it ends at the edge. @return its length [s] */
    private double settleAtEdge(double t, double[] y, double whole, double share, double atK) {
        int s = car.fanSensor();
        double step = Math.max(shortestS, share * whole);
        for (int turn = 0; turn < EDGE_TURNS; turn++) {
            stages(t, y, step);
            edgeErrorK = Math.abs(next[s] - atK);
            if (edgeErrorK < EDGE_K) {
                break;
            }
            double better = step + (atK - next[s]) / k[6][s];
            if (!(better >= shortestS && better <= whole)) {
                break;
            }
            step = better;
        }
        return step;
    }
}

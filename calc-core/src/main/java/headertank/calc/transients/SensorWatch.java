package headertank.calc.transients;

import headertank.calc.choice.SensorPlacement;
import headertank.calc.result.RunResult;

/** Compares one place's sensor with the truth, step by step. */
final class SensorWatch {

    /** Flow through the radiator over the pump's largest, up to which it counts as standing [-]; modelling choice. */
    private static final double STANDING_SHARE = 0.03;

    private final SensorPlacement placement;
    private double lowestK = Double.POSITIVE_INFINITY;
    private double lowestAtS;
    private double lowS;
    private double longestS;
    private double stretchS;
    private double standingK = Double.NaN;
    private double standingS;
    private double standingLowS;

    private SensorWatch(SensorPlacement placement) {
        this.placement = placement;
    }

    static SensorWatch[] all() {
        SensorPlacement[] places = SensorPlacement.values();
        SensorWatch[] all = new SensorWatch[places.length];
        for (int i = 0; i < places.length; i++) {
            all[i] = new SensorWatch(places[i]);
        }
        return all;
    }

    /**
     * @param t0 start of the step [s]
     * @param t1 end of the step [s]
     * @param e0 reading less truth at the start [K]
     * @param e1 the same at the end [K]
     * @param flowShare flow through the radiator over the pump's largest [-]
     */
    void watch(double t0, double t1, double e0, double e1, double flowShare) {
        if (e1 < lowestK) {
            lowestK = e1;
            lowestAtS = t1;
        }
        double low = (t1 - t0) * shareLow(e0, e1);
        lowS += low;
        stretchS = low > 0 ? stretchS + low : 0;
        longestS = Math.max(longestS, stretchS);
        if (flowShare < STANDING_SHARE) {
            standingS += t1 - t0;
            standingLowS += low;
            standingK = standingK < e1 ? standingK : e1;
        }
    }

    private static double shareLow(double a, double b) {
        double limit = -RunResult.SensorError.MISLEADS_K;
        if (a < limit == b < limit) {
            return a < limit ? 1 : 0;
        }
        return (limit - Math.min(a, b)) / Math.abs(b - a);
    }

    RunResult.SensorError result() {
        return new RunResult.SensorError(
                placement, lowestK, lowestAtS, lowS, longestS, standingK, standingS, standingLowS);
    }
}

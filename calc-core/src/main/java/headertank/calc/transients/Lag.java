package headertank.calc.transients;

import headertank.calc.sensor.SensorReading;

/** {@link SensorReading#step} that remembers the share of its last step: most lags and all whole steps are alike. */
final class Lag {

    private double lagS = Double.NaN;
    private double stepS = Double.NaN;
    private double share;

    /** @return what is shown after the step [K]; parameters as in {@link SensorReading#step} */
    double step(double shownK, double steadyK, double lag, double step) {
        if (lag != lagS || step != stepS) {
            share = SensorReading.step(0, 1, lag, step);
            lagS = lag;
            stepS = step;
        }
        return shownK + share * (steadyK - shownK);
    }
}

package headertank.calc.control;

/**
 * A fan control as stages with edges, for whoever follows it exactly through time: at which sensed temperature it goes up a
 * stage, at which it comes down, and its duty within one. A switch, a ramp and a table have stages 0 (off) and 1; two
 * relays have 0, 1 and 2. Ramp and table leave stage 1 half a kelvin below where they enter it (modelling choice: without
 * it a ramp's smallest duty would chatter). Pure functions.
 */
public final class FanStages {

    private FanStages() {}

    /** @return sensed temperature at or above which this stage is left upwards, infinite for the last one [K] */
    public static double upK(FanControlSpec spec, int stage) {
        if (spec instanceof FanControlSpec.TwoStep s) {
            return stage == 0 ? s.lowSetK() : stage == 1 ? s.fullSetK() : Double.POSITIVE_INFINITY;
        }
        return stage == 0 ? startOr(spec, Double.POSITIVE_INFINITY) : Double.POSITIVE_INFINITY;
    }

    /** @return sensed temperature below which this stage is left downwards, minus infinity for the first one [K] */
    public static double downK(FanControlSpec spec, int stage) {
        if (stage == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        if (spec instanceof FanControlSpec.Switch s) {
            return s.setK() - s.hysteresisK();
        }
        if (spec instanceof FanControlSpec.TwoStep s) {
            return (stage == 1 ? s.lowSetK() : s.fullSetK()) - s.hysteresisK();
        }
        return startOr(spec, Double.NEGATIVE_INFINITY) - FanController.STEP_WIDTH_K;
    }

    /**
     * @param spec the control
     * @param stage stage so far
     * @param sensedK what the sensor reads [K]
     * @return the stage that it asks for, through as many edges as the reading has passed
     */
    public static int stage(FanControlSpec spec, int stage, double sensedK) {
        if (spec.startK().isEmpty()) {
            return FanController.duty(spec, sensedK, 0.0) > 0 ? 1 : 0;
        }
        int now = stage;
        while (sensedK >= upK(spec, now)) {
            now++;
        }
        while (sensedK < downK(spec, now)) {
            now--;
        }
        return now;
    }

    /** @return duty that this stage asks for at a sensed temperature [K], before any soft start [-] */
    public static double duty(FanControlSpec spec, int stage, double sensedK) {
        if (stage == 0) {
            return 0;
        }
        if (spec instanceof FanControlSpec.TwoStep s) {
            return stage == 1 ? s.lowDuty() : 1;
        }
        if (spec instanceof FanControlSpec.Ramp r) {
            return Math.max(r.minimumDuty(), FanController.duty(spec, sensedK, 0.0));
        }
        return spec instanceof FanControlSpec.Table t ? t.dutyAt(sensedK) : 1;
    }

    private static double startOr(FanControlSpec spec, double otherwise) {
        return spec.startK().orElse(otherwise);
    }
}

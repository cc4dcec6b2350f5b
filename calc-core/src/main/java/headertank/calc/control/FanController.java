package headertank.calc.control;

import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;

/**
 * Duty of the fans, 0 to 1, from the sensed temperature. Pure functions: whoever steps through time passes the previous
 * duty in.
 *
 * <p>Ramp: d = (T - (T_set - band)) / band cut to 0..1, raised to the minimum duty once above 0. Derived from what such
 * controllers are sold to do (common practice, no source).
 */
public final class FanController {

    /** Width over which the steady duty passes a step that has no hysteresis of its own [K]; modelling choice. */
    static final double STEP_WIDTH_K = 0.5;

    private FanController() {}

    /**
     * @param spec the control
     * @param sensedK what the sensor reads [K]
     * @param previouslyOn whether the fans ran, at full speed if the control has steps
     * @return duty [-]
     */
    public static double duty(FanControlSpec spec, double sensedK, boolean previouslyOn) {
        return duty(spec, sensedK, previouslyOn ? 1.0 : 0.0);
    }

    /**
     * @param spec the control
     * @param sensedK what the sensor reads; no number is taken as cold [K]
     * @param previousDuty duty so far, which decides inside a hysteresis [-]
     * @return duty from now on [-]
     */
    public static double duty(FanControlSpec spec, double sensedK, double previousDuty) {
        if (spec instanceof FanControlSpec.Switch s) {
            return isOn(sensedK, s.setK(), s.hysteresisK(), previousDuty > 0) ? 1.0 : 0.0;
        }
        if (spec instanceof FanControlSpec.TwoStep s) {
            if (isOn(sensedK, s.fullSetK(), s.hysteresisK(), previousDuty > s.lowDuty())) {
                return 1.0;
            }
            return isOn(sensedK, s.lowSetK(), s.hysteresisK(), previousDuty > 0) ? s.lowDuty() : 0.0;
        }
        if (spec instanceof FanControlSpec.Ramp r) {
            double raw = share(sensedK, r.setK() - r.bandK(), r.setK());
            return raw > 0 ? Math.max(r.minimumDuty(), raw) : 0.0;
        }
        if (spec instanceof FanControlSpec.Table t) {
            return t.dutyAt(sensedK);
        }
        return spec instanceof FanControlSpec.AlwaysOn ? 1.0 : 0.0;
    }

    /**
     * Duty for a steady balance: continuous and never falling with temperature. A fan that cycles inside its hysteresis
     * counts as running the share of it that the temperature has climbed; the step onto a ramp's minimum duty is spread
     * over half a kelvin. Modelling choice: a steady solver would otherwise hang on the step.
     *
     * @param spec the control
     * @param sensedK what the sensor reads [K]
     * @return mean duty [-]
     */
    public static double steadyDuty(FanControlSpec spec, double sensedK) {
        if (spec instanceof FanControlSpec.Switch s) {
            return climbed(sensedK, s.setK(), s.hysteresisK());
        }
        if (spec instanceof FanControlSpec.TwoStep s) {
            return s.lowDuty() * climbed(sensedK, s.lowSetK(), s.hysteresisK())
                    + (1 - s.lowDuty()) * climbed(sensedK, s.fullSetK(), s.hysteresisK());
        }
        if (spec instanceof FanControlSpec.Ramp r) {
            double start = r.setK() - r.bandK();
            double raw = share(sensedK, start, r.setK());
            return Math.max(raw, r.minimumDuty() * share(sensedK, start, start + Math.min(STEP_WIDTH_K, r.bandK())));
        }
        if (spec instanceof FanControlSpec.Table t) {
            return t.dutyAt(sensedK);
        }
        return spec instanceof FanControlSpec.AlwaysOn ? 1.0 : 0.0;
    }

    /** @return the working, line by line, for a sensed temperature [K] and the duty that came of it [-] */
    public static List<WorkingLine> working(double sensedK, double duty) {
        return List.of(
                new WorkingLine(WorkedQuantity.TEMPERATURE_AT_THE_SENSOR, "T_x", "K", sensedK, "sensor's place"),
                new WorkingLine(
                        WorkedQuantity.DUTY_OF_THE_FANS, "d", "-", duty, "fan control, common practice, no source"));
    }

    private static boolean isOn(double sensedK, double setK, double hysteresisK, boolean wasOn) {
        return sensedK >= (wasOn ? setK - hysteresisK : setK);
    }

    private static double climbed(double sensedK, double setK, double hysteresisK) {
        return share(sensedK, setK - Math.max(hysteresisK, STEP_WIDTH_K), setK);
    }

    private static double share(double value, double from, double to) {
        double s = (value - from) / (to - from);
        return s > 0 ? Math.min(1.0, s) : 0.0;
    }
}

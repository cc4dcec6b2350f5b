package headertank.app.check.figure;

import java.util.ArrayList;
import java.util.List;

/** A straight scale of a drawing; what lies beyond an end is drawn at that end. */
public record Scale(double from, double to, double start, double end) {

    public double at(double value) {
        double inside = Double.isNaN(value) ? from : Math.max(Math.min(from, to), Math.min(Math.max(from, to), value));
        double place = start + (end - start) * (inside - from) / (to - from);
        return Math.rint(place * 10) / 10;
    }

    /** Round values between two bounds, about six of them. */
    public static List<Double> steps(double from, double to, double unit) {
        return steps(from, to, unit, 7);
    }

    /** Round values between two bounds, {@code most} steps at most. */
    public static List<Double> steps(double from, double to, double unit, int most) {
        double step = unit;
        double[] factors = {2, 2.5, 2};
        for (int i = 0; (to - from) / step > most; i++) {
            step *= factors[i % 3];
        }
        List<Double> steps = new ArrayList<>();
        for (double v = Math.ceil(from / step) * step; v <= to + 1e-9; v += step) {
            steps.add(v);
        }
        return steps;
    }
}

package headertank.app.chart;

import java.util.ArrayList;
import java.util.List;

/** A straight scale of a drawing, in pixels to a tenth; what lies beyond an end is drawn at that end. */
public record Scale(double from, double to, double start, double end) {

    public double at(double value) {
        double inside = Double.isNaN(value) ? from : Math.max(Math.min(from, to), Math.min(Math.max(from, to), value));
        double place = start + (end - start) * (inside - from) / (to - from);
        return Math.rint(place * 10) / 10;
    }

    /** Whether a value lies between the ends. */
    public boolean holds(double value) {
        return value >= Math.min(from, to) && value <= Math.max(from, to);
    }

    /** Round values between two bounds, {@code most} steps at most, each at least as wide as {@code least}. */
    static List<Double> steps(double from, double to, double least, int most) {
        double step = step(to - from, least, most);
        List<Double> steps = new ArrayList<>();
        for (double n = Math.ceil(from / step); n * step <= to + 1e-9 * (to - from); n++) {
            steps.add(n * step);
        }
        return steps;
    }

    /**
     * A round step, one, two or five times a power of ten of the least.
     *
     * @param least the smallest that makes sense; 0 when any does
     */
    static double step(double span, double least, int most) {
        double step = least > 0 ? least : Math.pow(10, Math.floor(Math.log10(span / most)));
        double[] factors = {2, 2.5, 2};
        for (int i = 0; span / step > most; i++) {
            step *= factors[i % 3];
        }
        return step;
    }
}

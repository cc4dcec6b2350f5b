package headertank.calc.transients;

/** Mean and height of a temperature over time, from the ends of steps. */
final class Swing {

    private double seconds;
    private double sum;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    void add(double dt, double from, double to) {
        seconds += dt;
        sum += 0.5 * dt * (from + to);
        low = Math.min(low, to);
        high = Math.max(high, to);
    }

    double seconds() {
        return seconds;
    }

    double mean() {
        return sum / seconds;
    }

    double height() {
        return seconds > 0 ? high - low : 0;
    }
}

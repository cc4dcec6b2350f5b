package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.List;
import org.hipparchus.util.FastMath;

/** A fan's curve from the few figures that a shop has. */
public final class FanFit {

    /** Highest air power over electric power of a usual fan [-]; sigma 0.07, modelling choice. */
    public static final double USUAL_EFFICIENCY = 0.30;

    /** Usual kinetic power at free delivery over electric power [-]; modelling choice, see {@link FanClaim}. */
    public static final double USUAL_KINETIC_SHARE = 0.22;

    private static final Range FLOW = Range.of(0.02, 8);
    private static final Range POWER = Range.of(1, 20e3);

    private FanFit() {}

    /**
     * One measured point of a fan.
     *
     * @param flowM3PerS flow [m3/s], 0 to 8
     * @param risePa pressure rise [Pa], 0 to 5000
     */
    public record Point(double flowM3PerS, double risePa) {

        public Point {
            OutOfRangeException.require("flowM3PerS", flowM3PerS, Range.of(0, 8));
            OutOfRangeException.require("risePa", risePa, Range.of(0, 5000));
        }
    }

    /**
     * A fan's two figures.
     *
     * @param freeFlowM3PerS q0 [m3/s]
     * @param shutOffPa p0 [Pa]
     */
    public record Fitted(double freeFlowM3PerS, double shutOffPa) {}

    /**
     * Largest {@code u (1 - s u - (1 - s) u^2)}: best air power over {@code p0 q0}. 0.316 at s = 0.5, where u = 0.549.
     *
     * @param shape s, 0.2 to 0.9 [-]
     */
    public static double bestPowerShare(double shape) {
        double s = OutOfRangeException.require("shape", shape, Range.of(0.2, 0.9));
        double u = 1 / (s + FastMath.sqrt(s * s + 3 * (1 - s)));
        return u * (1 - u * (s + (1 - s) * u));
    }

    /**
     * Missing shut-off pressure: {@code p0 = 0.30 P_el/(0.316 q0)}; derived from the usual efficiency, sigma 23 %.
     *
     * @param freeFlowM3PerS q0 [m3/s], 0.02 to 8
     * @param electricW electric power of one fan P_el [W], 1 to 20 000
     * @param shape s [-]
     */
    public static double shutOffPa(double freeFlowM3PerS, double electricW, double shape) {
        OutOfRangeException.require("freeFlowM3PerS", freeFlowM3PerS, FLOW);
        OutOfRangeException.require("electricW", electricW, POWER);
        return USUAL_EFFICIENCY * electricW / (bestPowerShare(shape) * freeFlowM3PerS);
    }

    /**
     * Missing free flow: that whose kinetic power is 0.22 of the electric power; derived, sigma 15 %.
     *
     * @param electricW electric power of one fan [W], 1 to 20 000
     * @param annulusM2 area between hub and blade tips [m2], 0.001 to 1
     */
    public static double freeFlowM3PerS(double electricW, double annulusM2) {
        OutOfRangeException.require("electricW", electricW, POWER);
        OutOfRangeException.require("annulusM2", annulusM2, Range.of(0.001, 1));
        return FanClaim.flowAtShareM3PerS(USUAL_KINETIC_SHARE, electricW, annulusM2);
    }

    /**
     * Both figures from measured points, by least squares of the pressures with the usual shape.
     *
     * @param points at least two points with different flows, at reference speed in air of 1.2 kg/m3
     * @param shape s [-]
     * @return the fan that fits best; for two points it passes through both when a falling curve can
     */
    public static Fitted throughPoints(List<Point> points, double shape) {
        double s = OutOfRangeException.require("shape", shape, Range.of(0.2, 0.9));
        OutOfRangeException.require("number of points", points.size(), Range.of(2, 1000));
        double largest = points.stream().mapToDouble(Point::flowM3PerS).max().orElseThrow();
        double smallest = points.stream().mapToDouble(Point::flowM3PerS).min().orElseThrow();
        OutOfRangeException.require("spread of flows", largest - smallest, Range.of(1e-6, 8));
        double low = Math.max(0.02, largest);
        double best = low;
        for (int i = 0; i <= 400; i++) {
            double q0 = low * FastMath.pow(8 / low, i / 400.0);
            best = error(points, s, q0) < error(points, s, best) ? q0 : best;
        }
        double a = Math.max(low, best / FastMath.pow(8 / low, 1 / 400.0));
        double b = Math.min(8, best * FastMath.pow(8 / low, 1 / 400.0));
        for (int i = 0; i < 80; i++) {
            double c = b - 0.6180339887498949 * (b - a);
            double d = a + 0.6180339887498949 * (b - a);
            if (error(points, s, c) < error(points, s, d)) {
                b = d;
            } else {
                a = c;
            }
        }
        double q0 = (a + b) / 2;
        return new Fitted(q0, shutOff(points, s, q0));
    }

    private static double shutOff(List<Point> points, double s, double q0) {
        double top = 0;
        double bottom = 0;
        for (Point p : points) {
            double y = shapeAt(p.flowM3PerS() / q0, s);
            top += y * p.risePa();
            bottom += y * y;
        }
        return top / Math.max(bottom, Double.MIN_NORMAL);
    }

    private static double error(List<Point> points, double s, double q0) {
        double p0 = shutOff(points, s, q0);
        double sum = 0;
        for (Point p : points) {
            double d = p0 * shapeAt(p.flowM3PerS() / q0, s) - p.risePa();
            sum += d * d;
        }
        return sum;
    }

    private static double shapeAt(double u, double s) {
        return 1 - u * (s + (1 - s) * u);
    }
}

package headertank.calc.evidence;

import headertank.calc.quantity.OutOfRangeException;
import java.util.List;

/**
 * What a maker's sheet or a test bench says of the coolant pump: pressure rise at given flows and speeds.
 *
 * @param sigmaShare one standard deviation as a share of the highest rise, 0.002 to 0.3; a test bench 0.03, a maker's sheet 0.08
 *     (modelling choices) [-]
 * @param points its lines, at least one
 */
public record PumpSheet(double sigmaShare, List<Point> points) implements Evidence {

    /**
     * One line.
     *
     * @param speedShare speed of the pump over that at the engine's rated speed, of an electric one over its full speed [-]
     * @param flowM3PerS coolant through it [m3/s]
     * @param risePa pressure rise [Pa]
     */
    public record Point(double speedShare, double flowM3PerS, double risePa) {

        public Point {
            OutOfRangeException.require("sheet.speedShare", speedShare, 0.05, 1.5);
            OutOfRangeException.require("sheet.pumpFlowM3PerS", flowM3PerS, 0, 0.1);
            OutOfRangeException.require("sheet.pumpRisePa", risePa, 0, 1e6);
        }
    }

    public PumpSheet {
        OutOfRangeException.require("sheet.sigmaShare", sigmaShare, 0.002, 0.3);
        points = List.copyOf(points);
        OutOfRangeException.require("sheet.points", points.size(), 1, 1000);
    }

    /** @return highest pressure rise of its lines, at least 1 [Pa] */
    public double highestPa() {
        return points.stream().mapToDouble(Point::risePa).reduce(1, Math::max);
    }
}

package headertank.calc.evidence;

import headertank.calc.quantity.OutOfRangeException;
import java.util.List;

/**
 * What a maker's sheet or a test bench says of one electric fan: pressure rise at given flows, and its current.
 *
 * @param airKgPerM3 density of the air of the test, 0.5 to 2; 1.2 where a sheet does not say [kg/m3]
 * @param sigmaShare one standard deviation as a share of the highest rise and of each current, 0.002 to 0.3; a test bench 0.03, a
 *     maker's sheet 0.08 (modelling choices) [-]
 * @param points its lines, at least one
 */
public record FanSheet(double airKgPerM3, double sigmaShare, List<Point> points) implements Evidence {

    /**
     * One line.
     *
     * @param flowM3PerS air through one fan [m3/s]
     * @param risePa pressure rise [Pa]
     * @param voltageV at its terminals [V]
     * @param currentA what it draws, no number where the sheet does not say [A]
     */
    public record Point(double flowM3PerS, double risePa, double voltageV, double currentA) {

        public Point {
            OutOfRangeException.require("sheet.fanFlowM3PerS", flowM3PerS, 0, 8);
            OutOfRangeException.require("sheet.fanRisePa", risePa, 0, 5000);
            OutOfRangeException.require("sheet.voltageV", voltageV, 4, 60);
            if (!Double.isNaN(currentA)) {
                OutOfRangeException.require("sheet.currentA", currentA, 0.1, 400);
            }
        }
    }

    public FanSheet {
        OutOfRangeException.require("sheet.airKgPerM3", airKgPerM3, 0.5, 2);
        OutOfRangeException.require("sheet.sigmaShare", sigmaShare, 0.002, 0.3);
        points = List.copyOf(points);
        OutOfRangeException.require("sheet.points", points.size(), 1, 1000);
    }

    /** @return highest pressure rise of its lines, at least 1 [Pa] */
    public double highestPa() {
        return points.stream().mapToDouble(Point::risePa).reduce(1, Math::max);
    }
}

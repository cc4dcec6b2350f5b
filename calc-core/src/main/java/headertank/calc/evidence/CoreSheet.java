package headertank.calc.evidence;

import headertank.calc.choice.CoolantBase;
import headertank.calc.quantity.OutOfRangeException;
import java.util.List;

/**
 * What a maker's sheet or a test bench says of the core: heat at given flows and inlet temperatures.
 *
 * @param base coolant of the test
 * @param glycolShare share of glycol by volume, 0 to 0.65 [-]
 * @param sigmaShare one standard deviation of the heat as a share, 0.002 to 0.3; a test bench 0.02, a maker's sheet 0.04 (modelling
 *     choices) [-]
 * @param points its lines, at least one
 */
public record CoreSheet(CoolantBase base, double glycolShare, double sigmaShare, List<Point> points)
        implements Evidence {

    /**
     * One line.
     *
     * @param airKgPerS air through the core [kg/s]
     * @param airInK air entering [K]
     * @param coolantM3PerS coolant flow [m3/s]
     * @param coolantInK coolant entering, above the air [K]
     * @param heatW heat [W]
     */
    public record Point(double airKgPerS, double airInK, double coolantM3PerS, double coolantInK, double heatW) {

        public Point {
            OutOfRangeException.require("sheet.airKgPerS", airKgPerS, 1e-3, 50);
            OutOfRangeException.require("sheet.airInK", airInK, 233.15, 343.15);
            OutOfRangeException.require("sheet.coolantM3PerS", coolantM3PerS, 1e-6, 0.1);
            OutOfRangeException.require("sheet.coolantInK", coolantInK, airInK + 1, 473.15);
            OutOfRangeException.require("sheet.heatW", heatW, 1, 1e7);
        }
    }

    public CoreSheet {
        OutOfRangeException.require("sheet.glycolShare", glycolShare, 0, 0.65);
        OutOfRangeException.require("sheet.sigmaShare", sigmaShare, 0.002, 0.3);
        points = List.copyOf(points);
        OutOfRangeException.require("sheet.points", points.size(), 1, 1000);
    }
}

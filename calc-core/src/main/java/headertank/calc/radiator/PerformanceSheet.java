package headertank.calc.radiator;

import headertank.calc.fluid.Coolant;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Range;
import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.util.FastMath;

/**
 * What a maker's sheet or a test bench says of a radiator: heat at given flows and inlet temperatures. One factor on one
 * side's coefficient is fitted so that the mean logarithm of computed over stated heat is zero; the rest is reported.
 *
 * @param coolant the coolant of the sheet
 * @param points at least one point
 */
public record PerformanceSheet(Coolant coolant, List<Point> points) {

    private static final Range FACTOR = Range.of(0.1, 10.0);
    private static final Range AIR = Range.of(1e-3, 50);
    private static final Range FLOW = Range.of(1e-6, 0.1);
    private static final Range HEAT = Range.of(1, 1e7);

    /** Which coefficient is fitted. */
    public enum Side {
        /** The air side, which holds most of the resistance: the usual choice. */
        AIR,
        /** The tube side. */
        TUBE
    }

    /**
     * One line of the sheet.
     *
     * @param airMassKgPerS air mass flow [kg/s]
     * @param airInK air entering [K]
     * @param coolantFlowM3PerS coolant flow [m3/s]
     * @param coolantInK coolant entering, above the air [K]
     * @param heatW heat [W]
     */
    public record Point(
            double airMassKgPerS, double airInK, double coolantFlowM3PerS, double coolantInK, double heatW) {

        public Point {
            OutOfRangeException.require("sheet.airMassKgPerS", airMassKgPerS, AIR);
            OutOfRangeException.require("sheet.coolantFlowM3PerS", coolantFlowM3PerS, FLOW);
            OutOfRangeException.require("sheet.heatW", heatW, HEAT);
            OutOfRangeException.require("sheet.coolantInK", coolantInK, Range.of(airInK + 1, 473.15));
        }
    }

    /**
     * A fitted sheet.
     *
     * @param factors factors for {@link Radiator}
     * @param residualShare root mean square of the logarithm of computed over stated heat [-]
     * @param worstShare largest magnitude of that logarithm [-]
     */
    public record Fit(RadiatorFactors factors, double residualShare, double worstShare) {}

    public PerformanceSheet {
        points = List.copyOf(points);
        OutOfRangeException.require("sheet.points", points.size(), Range.of(1, 1000));
    }

    /**
     * @param spec the radiator, by measured figures or by its class
     * @param side which coefficient is fitted
     * @throws OutOfRangeException when no factor of 0.1 to 10 explains the sheet
     */
    public Fit fit(RadiatorSpec spec, Side side) {
        double low = meanLog(spec, side, FACTOR.min());
        double high = meanLog(spec, side, FACTOR.max());
        if (!(low <= 0 && high >= 0)) {
            // The model meets the sheet when this ratio is 1; these are the ratios at the smallest and largest factor.
            throw new OutOfRangeException(
                    "sheet.computedOverStatedHeat", 1.0, Range.of(FastMath.exp(low), FastMath.exp(high)));
        }
        double lnFactor = new BracketingNthOrderBrentSolver(1e-10, 1e-10, 5)
                .solve(
                        100,
                        ln -> meanLog(spec, side, FastMath.exp(ln)),
                        FastMath.log(FACTOR.min()),
                        FastMath.log(FACTOR.max()));
        RadiatorFactors factors = factors(side, FastMath.exp(lnFactor));
        Radiator radiator = new Radiator(spec, factors);
        double squares = 0;
        double worst = 0;
        for (Point p : points) {
            double d = log(radiator, p);
            squares += d * d;
            worst = Math.max(worst, Math.abs(d));
        }
        return new Fit(factors, FastMath.sqrt(squares / points.size()), worst);
    }

    private double meanLog(RadiatorSpec spec, Side side, double factor) {
        Radiator radiator = new Radiator(spec, factors(side, factor));
        double sum = 0;
        for (Point p : points) {
            sum += log(radiator, p);
        }
        return sum / points.size();
    }

    private double log(Radiator radiator, Point p) {
        double heat = radiator.heat(
                        p.airMassKgPerS(),
                        p.airInK(),
                        Physics.STANDARD_PRESSURE_PA,
                        p.coolantFlowM3PerS(),
                        coolant,
                        p.coolantInK())
                .heatW();
        return FastMath.log(heat / p.heatW());
    }

    private static RadiatorFactors factors(Side side, double factor) {
        return side == Side.AIR ? new RadiatorFactors(factor, 1, 1) : new RadiatorFactors(1, 1, factor);
    }
}

package headertank.calc.coolant;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * A coolant pump by the two ends of its curve at rated speed.
 *
 * <p>Typical belt-driven pumps, `common practice, no source`: 130 kPa and 4.5 L/s (four cylinders), 170 kPa and 7 L/s
 * (turbo), 170 kPa and 10 L/s (V8); one standard deviation of the flow 15 %. Outside the ranges: typed error.
 *
 * @param headAtRatedPa pressure rise at rated speed and no flow, 1 kPa to 1 MPa [Pa]
 * @param maxFlowM3PerS flow at rated speed and no pressure rise, 0.01 to 100 L/s [m3/s]
 * @param electric whether a motor of its own drives it, so that its speed does not follow the engine
 */
public record PumpSpec(double headAtRatedPa, double maxFlowM3PerS, boolean electric) {

    private static final Range HEAD = Range.of(1e3, 1e6);
    private static final Range FLOW = Range.of(1e-5, 0.1);

    public PumpSpec {
        OutOfRangeException.require("pump.headAtRatedPa", headAtRatedPa, HEAD);
        OutOfRangeException.require("pump.maxFlowM3PerS", maxFlowM3PerS, FLOW);
    }

    /**
     * The pump's speed as a share of its rated speed: the engine's for a belt pump, the motor's for an electric one.
     *
     * @param engineSpeedShare engine speed over rated engine speed [-]
     * @param motorShare commanded speed of an electric pump over its full speed; unused for a belt pump [-]
     * @return pump speed share [-]
     */
    public double speedShare(double engineSpeedShare, double motorShare) {
        return electric ? motorShare : engineSpeedShare;
    }
}

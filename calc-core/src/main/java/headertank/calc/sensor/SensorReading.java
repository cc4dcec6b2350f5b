package headertank.calc.sensor;

import headertank.calc.choice.SensorPlacement;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * What a sensor reads in the steady state, and how slowly.
 *
 * <p>Head: T_h + 2 K (the warm wall); block: T_h. A hose or tank has its own small volume V_x that the flow Q renews with
 * the time V_x/Q while the air cools it with 300 s: T_x = (T_s/t_Q + T_a/300) / (1/t_Q + 1/300), t_Q = V_x/Q, T_s the
 * coolant that enters it (engine out for the hose, radiator out for the tank), T_a ambient [K]. So with no flow, or behind
 * a shut thermostat, it drifts towards ambient while the engine may boil. Lag = sensor's own + 1/(1/t_Q + 1/300). Volumes
 * (0.5 L hose, 1.5 L tank), times and the 2 K are modelling choices; the mixing formula is derived.
 *
 * @param steadyK what it shows once settled [K]
 * @param offsetK that less the coolant out of the engine, what the driver is misled by [K]
 * @param lagS time constant [s]
 */
public record SensorReading(double steadyK, double offsetK, double lagS) {

    /** Bias of a sensor in the head towards the warm wall [K]; modelling choice. */
    public static final double HEAD_BIAS_K = 2.0;

    /** Time constant of hose or tank towards the ambient temperature [s]; modelling choice. */
    public static final double TO_AMBIENT_S = 300.0;

    private static final double HOSE_M3 = 0.5e-3;
    private static final double TANK_M3 = 1.5e-3;

    /**
     * @param placement where it sits
     * @param mount how it is fitted
     * @param engineOutK coolant out of the engine [K]
     * @param radiatorOutK coolant out of the radiator [K]
     * @param ambientK ambient [K]
     * @param radiatorFlowM3PerS flow through the radiator; negative and no number are taken as no flow [m3/s]
     * @return the reading
     */
    public static SensorReading of(
            SensorPlacement placement,
            SensorMount mount,
            double engineOutK,
            double radiatorOutK,
            double ambientK,
            double radiatorFlowM3PerS) {
        double steady = steadyK(placement, engineOutK, radiatorOutK, ambientK, radiatorFlowM3PerS);
        return new SensorReading(steady, steady - engineOutK, lagS(placement, mount, radiatorFlowM3PerS));
    }

    /** @return what it shows once settled [K]; parameters as in {@link #of} */
    public static double steadyK(
            SensorPlacement placement,
            double engineOutK,
            double radiatorOutK,
            double ambientK,
            double radiatorFlowM3PerS) {
        return switch (placement) {
            case HEAD -> engineOutK + HEAD_BIAS_K;
            case BLOCK -> engineOutK;
            case RADIATOR_HOSE -> mixedK(engineOutK, ambientK, renewalsPerS(HOSE_M3, radiatorFlowM3PerS));
            case TANK -> mixedK(radiatorOutK, ambientK, renewalsPerS(TANK_M3, radiatorFlowM3PerS));
        };
    }

    /** @return time constant [s]; parameters as in {@link #of} */
    public static double lagS(SensorPlacement placement, SensorMount mount, double radiatorFlowM3PerS) {
        return switch (placement) {
            case HEAD, BLOCK -> mount.lagS();
            case RADIATOR_HOSE -> mount.lagS() + volumeLagS(HOSE_M3, radiatorFlowM3PerS);
            case TANK -> mount.lagS() + volumeLagS(TANK_M3, radiatorFlowM3PerS);
        };
    }

    /**
     * One step in time of a first-order lag, exact for a steady target: T + (T_steady - T)(1 - exp(-dt/lag)).
     *
     * @param shownK what it shows now [K]
     * @param steadyK what it would settle at [K]
     * @param lagS time constant, above 0 [s]
     * @param stepS time step, at least 0 [s]
     * @return what it shows after the step [K]
     */
    public static double step(double shownK, double steadyK, double lagS, double stepS) {
        return shownK - (steadyK - shownK) * FastMath.expm1(-stepS / lagS);
    }

    private static double renewalsPerS(double volumeM3, double flowM3PerS) {
        return flowM3PerS > 0 ? flowM3PerS / volumeM3 : 0.0;
    }

    private static double mixedK(double sourceK, double ambientK, double renewals) {
        return ambientK + (sourceK - ambientK) * renewals / (renewals + 1 / TO_AMBIENT_S);
    }

    private static double volumeLagS(double volumeM3, double flowM3PerS) {
        return 1 / (renewalsPerS(volumeM3, flowM3PerS) + 1 / TO_AMBIENT_S);
    }

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        return List.of(
                new WorkingLine(WorkedQuantity.SENSOR_SHOWS, "T_x", "K", steadyK, "modelling choice"),
                new WorkingLine(WorkedQuantity.SHOWN_LESS_ENGINE_OUTLET, "-", "K", offsetK, "derived"),
                new WorkingLine(WorkedQuantity.LAG_OF_THE_SENSOR, "tau_x", "s", lagS, "modelling choice"));
    }
}

package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import org.hipparchus.util.FastMath;

/**
 * Why the air that enters the core is warmer than the day: heat given off in front of it, and hot air drawn in again.
 *
 * <p>{@code T_in = T_a + Q_up/C_a + r/(1 - r) Q/C_a} with {@code r = min(0.7, r_0 exp(-V/5) + m_back/m_fwd)}: a share r of
 * the entering air is core-outlet air. The balance is derived; r_0 and the 5 m/s are guessed, 50 %.
 */
public final class Recirculation {

    /** Largest share of hot air that the model admits [-]. */
    public static final double SHARE_MAX = 0.7;

    private static final double FADING_SPEED_M_PER_S = 5.0;

    private Recirculation() {}

    /**
     * @param atRest r_0 [-]
     * @param speedMPerS car speed V [m/s]
     * @return r where no air flows back through the core [-]
     */
    public static double shareWithoutBackflow(double atRest, double speedMPerS) {
        return atRest * FastMath.exp(-speedMPerS / FADING_SPEED_M_PER_S);
    }

    /**
     * @param withoutBackflow {@link #shareWithoutBackflow} [-]
     * @param forwardKgPerS air through the core forwards [kg/s]
     * @param backKgPerS air through the core backwards [kg/s]
     * @return r, 0 to {@link #SHARE_MAX} [-]; without forward flow any backward flow counts in full
     */
    public static double share(double withoutBackflow, double forwardKgPerS, double backKgPerS) {
        double back = backKgPerS <= 0 ? 0 : backKgPerS / Math.max(forwardKgPerS, 1e-9 * backKgPerS);
        return Math.min(SHARE_MAX, withoutBackflow + back);
    }

    /**
     * @param ambientK ambient temperature T_a [K]
     * @param upstreamW heat that reaches the core's air from coolers in front of it, see {@link UpstreamHeat} [W]
     * @param share r, 0 to {@link #SHARE_MAX} [-]
     * @param coreHeatW heat that the core gives to the air Q [W]
     * @param capacityRateWPerK heat capacity rate of the air C_a [W/K], above 0
     * @return temperature of the air entering the core [K]
     */
    public static double inletK(
            double ambientK, double upstreamW, double share, double coreHeatW, double capacityRateWPerK) {
        OutOfRangeException.require("share", share, 0, SHARE_MAX);
        OutOfRangeException.require("capacityRateWPerK", capacityRateWPerK, Double.MIN_NORMAL, 1e9);
        return ambientK + (upstreamW + share / (1 - share) * coreHeatW) / capacityRateWPerK;
    }

    /**
     * The same with the core's heat not known but proportional to the difference of the inlets, {@code Q = K (T_h - T_in)},
     * and the balance solved for T_in: {@code T_in = (T_a + Q_up/C_a + k T_h)/(1 + k)}, {@code k = r/(1 - r) K/C_a}.
     *
     * @param coreWPerK K, 0 when the core gives no heat to the air [W/K]
     * @param coolantInK coolant entering the core T_h [K]
     * @return temperature of the air entering the core [K]; other parameters as in {@link #inletK}
     */
    public static double inletBeforeCoreK(
            double ambientK,
            double upstreamW,
            double share,
            double coreWPerK,
            double coolantInK,
            double capacityRateWPerK) {
        double k = share / (1 - share) * coreWPerK / capacityRateWPerK;
        return inletK(
                ambientK + k * (coolantInK - ambientK) / (1 + k), upstreamW / (1 + k), share, 0, capacityRateWPerK);
    }
}

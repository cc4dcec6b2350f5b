package headertank.calc.coolant;

/**
 * Pressure rise of a centrifugal pump: dp = p0 (n/nr)^2 - c Q^2 with c = p0 / Qmax^2.
 *
 * <p>Speed enters by the affinity laws (flow ~ n, pressure ~ n^2): from memory, any text on turbomachines. The parabola
 * without a linear term is a modelling choice. Beyond Qmax n/nr the rise is negative: the pump resists.
 *
 * @param headPa p0, rise at rated speed without flow [Pa]
 * @param curvePaS2PerM6 c, loss of rise with the square of the flow [Pa s2/m6]
 */
public record CoolantPump(double headPa, double curvePaS2PerM6) {

    /** @return the pump of this spec */
    public static CoolantPump of(PumpSpec spec) {
        return new CoolantPump(
                spec.headAtRatedPa(), spec.headAtRatedPa() / (spec.maxFlowM3PerS() * spec.maxFlowM3PerS()));
    }

    /**
     * @param speedShare n/nr, at least 0 [-]
     * @return rise without flow [Pa]
     */
    public double shutOffPa(double speedShare) {
        return headPa * speedShare * speedShare;
    }

    /**
     * @param speedShare n/nr, at least 0 [-]
     * @param flowM3PerS Q, at least 0 [m3/s]
     * @return rise at this flow [Pa]
     */
    public double risePa(double speedShare, double flowM3PerS) {
        return shutOffPa(speedShare) - curvePaS2PerM6 * flowM3PerS * flowM3PerS;
    }
}

package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import org.hipparchus.util.FastMath;

/**
 * Whether an advertised fan flow is possible with the stated current.
 *
 * <p>At free delivery the air leaves with the kinetic power {@code P_k = rho/2 q0^3/A^2}, A the blade annulus; the jet of an
 * open fan is no wider, so this is a lower bound of the power that the fan must draw (derived). Usual fans show P_k over
 * electric power of 0.10 to 0.35; more than 0.45 with brushes or 0.60 without cannot be (modelling choices from motor and
 * blade efficiencies). An impossible flow is cut to the share 0.30.
 *
 * @param kineticW P_k [W]
 * @param electricW voltage times current [W]
 * @param verdict what to think of it
 * @param correctedFreeFlowM3PerS the claimed flow, or the cut one when the claim is impossible [m3/s]
 */
public record FanClaim(double kineticW, double electricW, Verdict verdict, double correctedFreeFlowM3PerS) {

    /** What the ratio says. */
    public enum Verdict {
        /** Below the usual ratio: the fan is weaker, or honest, for its current. */
        MODEST,
        /** A usual ratio. */
        PLAUSIBLE,
        /** Above the usual ratio, but possible. */
        DOUBTFUL,
        /** More kinetic power than such a motor and blades can deliver. */
        IMPOSSIBLE
    }

    private static final double CORRECTED_SHARE = 0.30;

    /**
     * @param fan one of the fans as claimed
     * @param voltageV at the terminals [V], 1 to 100
     * @param currentA of one fan [A], 0.1 to 300
     * @param brushless whether its motor has no brushes
     * @return the judgement
     */
    public static FanClaim check(FanSpec fan, double voltageV, double currentA, boolean brushless) {
        OutOfRangeException.require("voltageV", voltageV, Range.of(1, 100));
        OutOfRangeException.require("currentA", currentA, Range.of(0.1, 300));
        double electric = voltageV * currentA;
        double q = fan.freeFlowM3PerS();
        double kinetic = 0.5 * FanCurve.STATED_DENSITY * q * q * q / (fan.annulusM2() * fan.annulusM2());
        double ratio = kinetic / electric;
        Verdict verdict = ratio > mostShare(brushless)
                ? Verdict.IMPOSSIBLE
                : ratio > 0.35 ? Verdict.DOUBTFUL : ratio < 0.10 ? Verdict.MODEST : Verdict.PLAUSIBLE;
        double corrected =
                verdict == Verdict.IMPOSSIBLE ? flowAtShareM3PerS(CORRECTED_SHARE, electric, fan.annulusM2()) : q;
        return new FanClaim(kinetic, electric, verdict, corrected);
    }

    private static double mostShare(boolean brushless) {
        return brushless ? 0.60 : 0.45;
    }

    /**
     * @param voltageV at the terminals [V]
     * @param brushless whether its motor has no brushes
     * @return current below which the claimed flow is impossible [A]
     */
    public double leastCurrentA(double voltageV, boolean brushless) {
        return kineticW / (mostShare(brushless) * voltageV);
    }

    static double flowAtShareM3PerS(double share, double electricW, double annulusM2) {
        return FastMath.cbrt(2 * share * electricW * annulusM2 * annulusM2 / FanCurve.STATED_DENSITY);
    }
}

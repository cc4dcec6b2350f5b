package headertank.calc.hood;

import java.util.Arrays;
import org.hipparchus.util.FastMath;

/**
 * The bench test: a little water on a panel that is heated from below, and how long it takes to get warm.
 *
 * <p>Shows why a test on a hot plate tells materials apart that a car never does: there a contact of some thousand W/m2K
 * stands below the panel, in the car a film of air of about twenty.
 *
 * @param waterKg mass of water [kg]
 * @param areaM2 area [m2]
 * @param waterFilmWPerM2K film between panel and water [W/m2K]
 * @param lossWPerM2K loss from the water to the room [W/m2K]
 * @param roomK temperature of the room [K]
 * @param belowWPerM2K film of air or contact with a plate below [W/m2K]
 * @param belowK temperature below [K]
 */
public record WaterOnPanel(
        double waterKg,
        double areaM2,
        double waterFilmWPerM2K,
        double lossWPerM2K,
        double roomK,
        double belowWPerM2K,
        double belowK) {

    /** Specific heat capacity of water near 35 deg C [J/kgK]; from memory. */
    private static final double WATER_J_PER_KG_K = 4182;

    private static final int CELLS = 40;
    private static final int MOST_STEPS = 2_000_000;

    /**
     * Without the panel's own mass: m c T' = U A (T_b - T) - g A (T - T_r), U = 1/(1/h_b + t/k + 1/h_w), so t = tau ln((T_inf
     * - T_0) / (T_inf - T_1)). Derived, exact.
     *
     * @param panelM2KPerW t/k of the panel [m2K/W]
     * @param fromK water at the start [K]
     * @param toK water at the end [K]
     * @return time, infinite when it never gets that warm [s]
     */
    public double lumpedS(double panelM2KPerW, double fromK, double toK) {
        double heated = areaM2 / (1 / belowWPerM2K + panelM2KPerW + 1 / waterFilmWPerM2K);
        double lost = areaM2 * lossWPerM2K;
        double finallyK = (heated * belowK + lost * roomK) / (heated + lost);
        if (toK >= finallyK) {
            return Double.POSITIVE_INFINITY;
        }
        double tau = waterKg * WATER_J_PER_KG_K / (heated + lost);
        return tau * FastMath.log((finallyK - fromK) / (finallyK - toK));
    }

    /**
     * With the panel's mass: one-dimensional conduction in 40 layers under the water, implicit mid-point (Crank and
     * Nicolson, from memory) with 2000 steps per lumped time; panel and water start equally warm.
     *
     * @param material the panel's material
     * @param thicknessM t, above 0 [m]
     * @param massFactor factor on the panel's heat capacity, 1 as it is, towards 0 the lumped case [-]
     * @param fromK water and panel at the start [K]
     * @param toK water at the end [K]
     * @return time, infinite when it never gets that warm [s]
     */
    public double layeredS(HoodMaterial material, double thicknessM, double massFactor, double fromK, double toK) {
        double k = material.conductivityWPerMK();
        double lumped = lumpedS(thicknessM / k, fromK, toK);
        if (Double.isInfinite(lumped)) {
            return lumped;
        }
        double dx = thicknessM / CELLS;
        double cell = massFactor * material.densityKgPerM3() * material.heatCapacityJPerKgK() * dx * areaM2;
        double between = areaM2 * k / dx;
        double below = areaM2 / (1 / belowWPerM2K + 0.5 * dx / k);
        double above = areaM2 / (1 / waterFilmWPerM2K + 0.5 * dx / k);
        double lost = areaM2 * lossWPerM2K;
        double step = lumped / 2000;

        int n = CELLS + 1;
        double[] t = new double[n];
        Arrays.fill(t, fromK);
        double[] c = new double[n];
        double[] toNext = new double[n];
        Arrays.fill(c, cell);
        Arrays.fill(toNext, between);
        c[n - 1] = waterKg * WATER_J_PER_KG_K;
        toNext[n - 2] = above;
        toNext[n - 1] = lost;
        double[] sweep = new double[n];
        double[] value = new double[n];
        for (int i = 1; i <= MOST_STEPS; i++) {
            double before = t[n - 1];
            advance(t, c, toNext, below, step, sweep, value);
            if (t[n - 1] >= toK) {
                return step * (i - 1 + (toK - before) / (t[n - 1] - before));
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** One implicit step: solves for the mid-point by forward sweep and back substitution, then doubles the change. */
    private void advance(
            double[] t, double[] c, double[] toNext, double below, double step, double[] sweep, double[] value) {
        int n = t.length;
        for (int i = 0; i < n; i++) {
            double left = i == 0 ? below : toNext[i - 1];
            double right = toNext[i];
            double capacity = 2 * c[i] / step;
            double known = capacity * t[i] + (i == 0 ? left * belowK : 0) + (i == n - 1 ? right * roomK : 0);
            double diagonal = capacity + left + right - (i == 0 ? 0 : left * sweep[i - 1]);
            sweep[i] = right / diagonal;
            value[i] = (known + (i == 0 ? 0 : left * value[i - 1])) / diagonal;
        }
        double mid = value[n - 1];
        t[n - 1] = 2 * mid - t[n - 1];
        for (int i = n - 2; i >= 0; i--) {
            mid = value[i] + sweep[i] * mid;
            t[i] = 2 * mid - t[i];
        }
    }
}

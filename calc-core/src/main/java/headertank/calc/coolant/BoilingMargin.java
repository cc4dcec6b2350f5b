package headertank.calc.coolant;

import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How far the coolant as a whole stays below boiling: margin = T_sat(p_cap) - T_h.
 *
 * <p>The bulk counts, not the head's wall, which boils locally in any engine at full load (see {@link HeadWall}). Limits of
 * 10 and 5 K: common practice, no source.
 *
 * @param hotK T_h, coolant out of the engine [K]
 * @param capPressurePa absolute pressure at the cap [Pa]
 * @param boilingK T_sat at that pressure [K]
 * @param marginK margin, negative when it would boil [K]
 * @param standing what follows
 */
public record BoilingMargin(double hotK, double capPressurePa, double boilingK, double marginK, Standing standing) {

    /** Margin from which nothing needs saying [K]; common practice, no source. */
    public static final double GO_K = 10.0;

    /** Margin below which the car does not leave [K]; common practice, no source. */
    public static final double NO_GO_K = 5.0;

    /** What a margin means. */
    public enum Standing {
        GO,
        CAUTION,
        NO_GO
    }

    /**
     * @param hotK coolant out of the engine [K]
     * @param atmospherePa pressure of the air outside [Pa]
     * @param cap the cap
     * @param boilingK boiling temperature [K] of this coolant at an absolute pressure [Pa]
     * @return the margin
     */
    public static BoilingMargin of(double hotK, double atmospherePa, PressureCap cap, DoubleUnaryOperator boilingK) {
        double pressure = cap.absolutePa(atmospherePa);
        double boiling = boilingK.applyAsDouble(pressure);
        double margin = boiling - hotK;
        return new BoilingMargin(hotK, pressure, boiling, margin, standing(margin));
    }

    /** @return what a margin in K means; no number is a no-go */
    public static Standing standing(double marginK) {
        if (marginK >= GO_K) {
            return Standing.GO;
        }
        return marginK >= NO_GO_K ? Standing.CAUTION : Standing.NO_GO;
    }

    /**
     * Gauge pressure that a cap must hold for a wanted margin: p_sat(T_h + margin) - p_atm.
     *
     * @param hotK coolant out of the engine [K]
     * @param wantedMarginK wanted margin [K]
     * @param atmospherePa pressure of the air outside [Pa]
     * @param saturationPa boiling pressure [Pa] of this coolant at a temperature [K]
     * @return gauge pressure, 0 when none is needed [Pa]
     */
    public static double requiredGaugePa(
            double hotK, double wantedMarginK, double atmospherePa, DoubleUnaryOperator saturationPa) {
        return Math.max(0, saturationPa.applyAsDouble(hotK + wantedMarginK) - atmospherePa);
    }

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        return List.of(
                new WorkingLine(WorkedQuantity.PRESSURE_AT_CAP, "p_cap", "Pa", capPressurePa, "p_atm + gauge, derived"),
                new WorkingLine(WorkedQuantity.BOILING_OF_MIXTURE, "T_sat", "K", boilingK, "coolant's boiling curve"),
                new WorkingLine(WorkedQuantity.ENGINE_OUTLET, "T_h", "K", hotK, "steady balance"),
                new WorkingLine(WorkedQuantity.BULK_BOILING_MARGIN, "T_sat - T_h", "K", marginK, "derived"));
    }
}

package headertank.calc.verdict;

import headertank.calc.coolant.BoilingMargin;
import headertank.calc.oil.OilBalance;
import headertank.calc.quantity.Basis;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Range;

/**
 * A number that {@link StandardPolicy} judges by, with its usual value and how far a shop may move it. Where a usual value is
 * common practice a shop may be stricter but not laxer; how much risk to accept is a policy in both directions.
 */
public enum Threshold {
    /** Highest probability of passing the coolant limit that still is a go [-]. */
    GO_PROBABILITY(0.05, Range.of(0.005, 0.15), FigureKind.SHARE, Basis.MODELLING_CHOICE),
    /** Highest probability of passing the coolant limit that may go with conditions [-]. */
    CONDITIONS_PROBABILITY(0.30, Range.of(0.05, 0.50), FigureKind.SHARE, Basis.MODELLING_CHOICE),
    /** Coolant margin for a go while no uncertainty is computed [K]. */
    GO_MARGIN_K(10, Range.of(5, 30), FigureKind.TEMPERATURE_DIFFERENCE, Basis.MODELLING_CHOICE),
    /** Bulk boiling margin for a go [K]. */
    GO_BOILING_K(
            BoilingMargin.GO_K,
            Range.of(BoilingMargin.GO_K, 30),
            FigureKind.TEMPERATURE_DIFFERENCE,
            Basis.COMMON_PRACTICE),
    /** Bulk boiling margin below which it is a no-go [K]. */
    LEAST_BOILING_K(
            BoilingMargin.NO_GO_K,
            Range.of(BoilingMargin.NO_GO_K, 20),
            FigureKind.TEMPERATURE_DIFFERENCE,
            Basis.COMMON_PRACTICE),
    /** Oil this far above its caution limit is a no-go [K]. */
    OIL_OVER_CAUTION_K(
            OilBalance.NO_GO_K - OilBalance.CAUTION_K,
            Range.of(0, OilBalance.NO_GO_K - OilBalance.CAUTION_K),
            FigureKind.TEMPERATURE_DIFFERENCE,
            Basis.COMMON_PRACTICE),
    /** Current that a battery may give while idling for a go [A]. */
    GO_DEFICIT_A(10, Range.of(0, 10), FigureKind.CURRENT, Basis.MODELLING_CHOICE);

    private final double standard;
    private final Range allowed;
    private final FigureKind kind;
    private final Basis basis;

    Threshold(double standard, Range allowed, FigureKind kind, Basis basis) {
        this.standard = standard;
        this.allowed = allowed;
        this.kind = kind;
        this.basis = basis;
    }

    /** @return the usual value, [SI] */
    public double standard() {
        return standard;
    }

    /** @return what a shop may choose, [SI] */
    public Range allowed() {
        return allowed;
    }

    /** @return what it is a figure of */
    public FigureKind kind() {
        return kind;
    }

    /** @return what the usual value rests on */
    public Basis basis() {
        return basis;
    }
}

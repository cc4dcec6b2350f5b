package headertank.calc.verdict;

import headertank.calc.coolant.BoilingMargin;
import headertank.calc.oil.OilBalance;
import headertank.calc.quantity.Range;

/**
 * A number that {@link StandardPolicy} judges by, with its usual value and how far a shop may move it. Where a usual value is
 * common practice a shop may be stricter but not laxer; how much risk to accept is a policy in both directions.
 */
public enum Threshold {
    /** Highest probability of passing the coolant limit that still is a go [-]. */
    GO_PROBABILITY(0.05, Range.of(0.005, 0.15), "-", "modelling choice"),
    /** Highest probability of passing the coolant limit that may go with conditions [-]. */
    CONDITIONS_PROBABILITY(0.30, Range.of(0.05, 0.50), "-", "modelling choice"),
    /** Coolant margin for a go while no uncertainty is computed [K]. */
    GO_MARGIN_K(10, Range.of(5, 30), "K", "modelling choice"),
    /** Bulk boiling margin for a go [K]. */
    GO_BOILING_K(BoilingMargin.GO_K, Range.of(BoilingMargin.GO_K, 30), "K", "common practice, no source"),
    /** Bulk boiling margin below which it is a no-go [K]. */
    LEAST_BOILING_K(BoilingMargin.NO_GO_K, Range.of(BoilingMargin.NO_GO_K, 20), "K", "common practice, no source"),
    /** Oil this far above its caution limit is a no-go [K]. */
    OIL_OVER_CAUTION_K(
            OilBalance.NO_GO_K - OilBalance.CAUTION_K,
            Range.of(0, OilBalance.NO_GO_K - OilBalance.CAUTION_K),
            "K",
            "common practice, no source"),
    /** Current that a battery may give while idling for a go [A]. */
    GO_DEFICIT_A(10, Range.of(0, 10), "A", "modelling choice");

    private final double standard;
    private final Range allowed;
    private final String unit;
    private final String source;

    Threshold(double standard, Range allowed, String unit, String source) {
        this.standard = standard;
        this.allowed = allowed;
        this.unit = unit;
        this.source = source;
    }

    /** @return the usual value, in {@link #unit} */
    public double standard() {
        return standard;
    }

    /** @return what a shop may choose, in {@link #unit} */
    public Range allowed() {
        return allowed;
    }

    /** @return {@code K}, {@code A} or {@code -} for a share; a kelvin is one of a difference */
    public String unit() {
        return unit;
    }

    /** @return what the usual value rests on */
    public String source() {
        return source;
    }
}

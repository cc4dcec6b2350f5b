package headertank.app.check.chart;

import headertank.app.check.stored.DutyResult;
import java.util.Optional;

/**
 * The margin of one duty as a bar on a line: where it is expected, how far it may be off, and where the limit lies. All in percent
 * of the width, so that the drawing fits any screen without its words growing or shrinking.
 *
 * @param limit where the limit lies; what lies left of it is too hot
 * @param at the expected margin
 * @param from start of the range
 * @param width its width, 0 for none
 */
public record MarginBar(double limit, double at, double from, double width) {

    /** The scale shows at least this much on each side of the limit [K]. */
    private static final double LEAST_K = 10;

    /** And no more than this, whatever the range [K]. */
    private static final double MOST_K = 60;

    /** Space beyond the outermost figure, as a share of the scale. */
    private static final double BEYOND = 0.04;

    /** The bar of a duty; empty when it has no balance. */
    public static Optional<MarginBar> of(DutyResult duty) {
        double margin = duty.coolantMarginK();
        if (!Double.isFinite(margin)) {
            return Optional.empty();
        }
        double low = duty.marginSpread().map(DutyResult.Range::low).orElse(margin);
        double high = duty.marginSpread().map(DutyResult.Range::high).orElse(margin);
        double least = within(Math.min(Math.min(low, margin), -LEAST_K));
        double most = within(Math.max(Math.max(high, margin), LEAST_K));
        double beyond = BEYOND * (most - least);
        double start = least - beyond;
        double scale = 100 / (most + beyond - start);
        double from = scale * (within(low) - start);
        return Optional.of(new MarginBar(
                tenth(scale * -start),
                tenth(scale * (within(margin) - start)),
                tenth(from),
                tenth(scale * (within(high) - start) - from)));
    }

    private static double within(double kelvin) {
        return Math.max(-MOST_K, Math.min(MOST_K, kelvin));
    }

    private static double tenth(double percent) {
        return Math.round(10 * percent) / 10.0;
    }
}

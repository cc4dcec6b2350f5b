package headertank.app.check.chart;

import headertank.app.chart.CurveChart.Tick;
import headertank.app.chart.Scale;
import headertank.app.check.figure.FigureText;
import headertank.app.check.stored.DutyResult;
import java.util.List;
import java.util.Optional;

/**
 * The margin of one duty as a bar on a line: where it is expected, how far it may be off, and where the limit lies. All in percent
 * of the width, so that the drawing fits any screen without its words growing or shrinking.
 *
 * @param limit where the limit lies; what lies left of it is too hot
 * @param at the expected margin
 * @param from start of the range
 * @param width its width, 0 for none
 * @param ticks places of round margins in the reader's unit, by which a place on the bar is read
 */
public record MarginBar(double limit, double at, double from, double width, List<Tick> ticks) {

    /** The scale shows at least this much on each side of the limit [K]. */
    private static final double LEAST_K = 10;

    /** And no more than this, whatever the range [K]. */
    private static final double MOST_K = 60;

    /** Space beyond the outermost figure, as a share of the scale. */
    private static final double BEYOND = 0.04;

    /** The bar of a duty; empty when it has no balance. */
    public static Optional<MarginBar> of(DutyResult duty, FigureText shown) {
        double margin = duty.coolantMarginK();
        if (!Double.isFinite(margin)) {
            return Optional.empty();
        }
        double low = duty.marginSpread().map(DutyResult.Range::low).orElse(margin);
        double high = duty.marginSpread().map(DutyResult.Range::high).orElse(margin);
        double least = within(Math.min(Math.min(low, margin), -LEAST_K));
        double most = within(Math.max(Math.max(high, margin), LEAST_K));
        double beyond = BEYOND * (most - least);
        Scale scale = new Scale(least - beyond, most + beyond, 0, 100);
        double from = scale.at(within(low));
        double width = Math.rint(10 * (scale.at(within(high)) - from)) / 10;
        return Optional.of(
                new MarginBar(scale.at(0), scale.at(within(margin)), from, width, shown.differenceTicks(scale)));
    }

    private static double within(double kelvin) {
        return Math.max(-MOST_K, Math.min(MOST_K, kelvin));
    }
}

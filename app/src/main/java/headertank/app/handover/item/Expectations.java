package headertank.app.handover.item;

import headertank.calc.result.IdleExpectation.Band;
import headertank.calc.result.IdleExpectation.Figure;
import java.util.Map;
import java.util.Optional;

/** What is expected of an item's reading: pressures from the spec, everything else from the models at the day's air. */
public final class Expectations {

    /** How far from its stamp a cap may open, as a share [-]; common practice, no source. */
    static final double CAP_SHARE = 0.10;

    /** How much of the pressure may be gone after ten minutes, as a share [-]; common practice, no source. */
    static final double LOSS_SHARE = 0.05;

    private Expectations() {}

    /** @param figures from the models; empty before the day's air is known */
    public static Optional<Band> of(CheckItem item, Map<Figure, Band> figures) {
        if (item.quantity().isEmpty()) {
            return Optional.empty();
        }
        double rating = item.value();
        return switch (item.quantity().get()) {
            case CAP_OPENS -> Optional.of(new Band(rating, (1 - CAP_SHARE) * rating, (1 + CAP_SHARE) * rating));
            case PRESSURE_HELD -> Optional.of(new Band(rating, (1 - LOSS_SHARE) * rating, 1.005 * rating));
            default -> item.quantity().get().figure().map(figures::get);
        };
    }
}

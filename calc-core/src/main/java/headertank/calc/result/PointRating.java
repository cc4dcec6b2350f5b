package headertank.calc.result;

import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.Note;
import headertank.calc.radiator.RadiatorSpread;
import java.util.List;
import java.util.Optional;

/**
 * A car at one operating point of a duty.
 *
 * @param point the operating point
 * @param balance the steady state, or why there is none
 * @param figures margins and limits; empty when there is no steady state
 * @param notes where a model was used beyond its source's range
 * @param radiatorSpread how far the radiator's correlations may be off there, widened by those notes; without a steady
 *     state that of the last state tried
 */
@SuppressWarnings("exports")
public record PointRating(
        OperatingPoint point,
        Balance balance,
        Optional<Figures> figures,
        List<Note> notes,
        RadiatorSpread radiatorSpread) {

    public PointRating {
        notes = List.copyOf(notes);
    }

    /** @return coolant margin [K]; minus infinity when there is no steady state */
    public double coolantMarginK() {
        return figures.map(Figures::coolantMarginK).orElse(Double.NEGATIVE_INFINITY);
    }
}

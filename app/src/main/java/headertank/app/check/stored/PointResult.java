package headertank.app.check.stored;

import java.util.List;
import java.util.Optional;

/**
 * One operating point of a stored check. All numbers in SI.
 *
 * @param steady the steady state; empty when there is none
 * @param reason why there is no steady state, a code; empty when there is one
 * @param explanation the same with its figures
 * @param working how the figures came about, part by part, each quantity with symbol, unit and source
 */
public record PointResult(
        String id,
        String label,
        Optional<Steady> steady,
        String reason,
        StoredMessage explanation,
        List<WorkingPart> working) {

    public PointResult {
        steady = steady == null ? Optional.empty() : steady;
        working = List.copyOf(working);
    }

    /** The working of one part of a point's balance. */
    public record WorkingPart(StoredMessage title, List<WorkingLine> lines) {
        public WorkingPart {
            lines = List.copyOf(lines);
        }
    }

    /** A quantity with its symbol, SI unit, value and source. */
    public record WorkingLine(StoredMessage quantity, String symbol, String unit, double value, String source) {}

    /**
     * A steady state with its margins, see {@link headertank.calc.result.Balance.Steady} and
     * {@link headertank.calc.result.Figures}; limiting and boiling ambient are infinite when no day reaches them. As flat as the
     * stored text, which stays as it is for ever: names, not places, say which figure is which, and one method fills them.
     *
     * @param gaugeK what the car's gauge shows [K]
     */
    public record Steady(
            double ambientK,
            double engineOutK,
            double radiatorOutK,
            double radiatorM3PerS,
            double gaugeK,
            double oilK,
            double coolantMarginK,
            double oilMarginK,
            double boilingMarginK,
            double limitingAmbientK,
            double limitingAmbientLinearK,
            double boilingAmbientK,
            double boilingAmbientLinearK,
            double fanCurrentA,
            double loadA,
            double availableA,
            double residualShare,
            int evaluations) {

        /** What the alternator gives beyond all loads [A]; negative when the battery pays. */
        public double spareA() {
            return availableA - loadA;
        }
    }
}

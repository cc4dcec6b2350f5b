package headertank.app.check.stored;

import headertank.calc.quantity.WorkingSection;
import java.util.List;
import java.util.Optional;

/**
 * One operating point of a stored check. All numbers in SI.
 *
 * @param steady the steady state; empty when there is none
 * @param reason why there is no steady state, a code; empty when there is one
 * @param explanation the same in a sentence
 * @param working how the figures came about, part by part, each quantity with symbol, unit and source
 */
public record PointResult(
        String id,
        String label,
        Optional<Steady> steady,
        String reason,
        String explanation,
        List<WorkingSection> working) {

    public PointResult {
        steady = steady == null ? Optional.empty() : steady;
        working = List.copyOf(working);
    }

    /**
     * A steady state with its margins, see {@link headertank.calc.result.Balance.Steady} and
     * {@link headertank.calc.result.Figures}; limiting and boiling ambient are infinite when no day reaches them.
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

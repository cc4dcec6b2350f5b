package headertank.calc.result;

import headertank.calc.carspec.Change;
import java.util.List;

/**
 * How many degrees of margin each difference between two builds cost or gained, for one duty.
 *
 * @param beforeK margin before [K]
 * @param afterK margin after [K]
 * @param effects one line per difference, costliest first
 * @param exact whether the shares come from all combinations rather than from sampled orders
 */
public record Attribution(double beforeK, double afterK, List<Effect> effects, boolean exact) {

    public Attribution {
        effects = List.copyOf(effects);
    }

    /**
     * Effect of one difference on the margin; positive gains margin.
     *
     * @param change the difference
     * @param aloneK margin of the car before with this difference alone, minus the margin before [K]
     * @param lastK margin after, minus the margin after with this difference undone [K]
     * @param shareK Shapley share; the shares of all differences sum to the whole difference [K]
     */
    public record Effect(Change change, double aloneK, double lastK, double shareK) {}
}

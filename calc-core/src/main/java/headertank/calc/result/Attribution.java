package headertank.calc.result;

import headertank.calc.carspec.Change;
import headertank.calc.carspec.FieldGroup;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How many degrees of margin each difference between two builds cost or gained, for one duty.
 *
 * @param beforeK margin before [K]
 * @param afterK margin after [K]
 * @param parts what changed by parts of the car, the costliest first; their shares sum to the whole difference
 * @param exact whether the shares come from all combinations rather than from sampled orders
 */
public record Attribution(double beforeK, double afterK, List<PartEffect> parts, boolean exact) {

    public Attribution {
        parts = List.copyOf(parts);
    }

    /** @return one line per difference, costliest first */
    public List<Effect> effects() {
        return parts.stream()
                .flatMap(p -> p.effects().stream())
                .sorted(Comparator.comparingDouble(Effect::shareK))
                .toList();
    }

    /**
     * Effect of one difference on the margin; positive gains margin.
     *
     * @param change the difference
     * @param aloneK margin of the car before with this difference alone, minus the margin before [K]
     * @param undoneK margin after with this difference undone, minus the margin after: what a hand gains by undoing it [K]
     * @param shareK Shapley share; the shares of all differences sum to the whole difference [K]
     */
    public record Effect(Change change, double aloneK, double undoneK, double shareK) {}

    /**
     * Effect of everything that changed of one part of the car; positive gains margin.
     *
     * @param part the part; empty for what is none: the class of car, how it is used, its limits
     * @param effects its differences, the costliest first
     * @param aloneK margin of the car before with this part changed alone, minus the margin before [K]
     * @param undoneK margin after with this part as it was before, minus the margin after [K]
     * @param shareK sum of the shares of its differences [K]
     */
    public record PartEffect(
            Optional<FieldGroup> part, List<Effect> effects, double aloneK, double undoneK, double shareK) {

        public PartEffect {
            effects = List.copyOf(effects);
        }
    }
}

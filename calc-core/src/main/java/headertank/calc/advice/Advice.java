package headertank.calc.advice;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Improvement;
import headertank.calc.result.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;

/**
 * Re-rates candidate changes one at a time, without uncertainty, and ranks them by what they buy where the car needs it most.
 * Two changes together buy less or more than the sum of both.
 */
public final class Advice {

    /** Changes that buy less than this in the duty that needs it most are left out [K]. */
    public static final double LEAST_K = 0.3;

    private Advice() {}

    /**
     * @param car the car as it is
     * @param marginsNow margin of each duty by its id, in the order of the rating [K]
     * @param marginK margin of a changed car in the duty of this id [K]; callable from several threads at once
     * @param most at most so many improvements
     * @return improvements, the one that buys most in the duty with the least margin first
     */
    public static List<Improvement> of(
            Resolved car, Map<String, Double> marginsNow, ToDoubleBiFunction<Resolved, String> marginK, int most) {
        String needsItMost = marginsNow.entrySet().stream()
                .min(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElseThrow(() -> new IllegalArgumentException("name at least one duty"));
        return PossibleChange.ALL.parallelStream()
                .flatMap(c -> c.change().apply(car).map(changed -> gained(c, changed, marginsNow, marginK)).stream())
                .filter(i -> i.gainK(needsItMost) >= LEAST_K)
                .sorted(Comparator.comparingDouble((Improvement i) -> i.gainK(needsItMost))
                        .reversed())
                .limit(most)
                .toList();
    }

    /**
     * @param car the car as it is
     * @param id of an improvement
     * @return what the improvement asks of this car; empty when there is no such improvement or nothing to change
     */
    public static Optional<Plan> plan(Resolved car, String id) {
        return PossibleChange.ALL.stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .flatMap(c -> c.change()
                        .apply(car)
                        .map(changed -> new Plan(c.label(), between(car, changed)))
                        .filter(p -> !p.entries().isEmpty()));
    }

    private static Map<BuildField, Entry> between(Resolved before, Resolved after) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        for (BuildField f : BuildField.values()) {
            if (f.isChoice() && !after.token(f).equals(before.token(f))) {
                entries.put(f, new Chosen(after.token(f), Provenance.GUESSED));
            } else if (!f.isChoice() && Double.compare(after.value(f), before.value(f)) != 0) {
                entries.put(f, Stated.guessed(after.value(f)));
            }
        }
        return entries;
    }

    private static Improvement gained(
            PossibleChange candidate,
            Resolved changed,
            Map<String, Double> marginsNow,
            ToDoubleBiFunction<Resolved, String> marginK) {
        List<Improvement.Gain> gains = new ArrayList<>();
        marginsNow.forEach(
                (duty, now) -> gains.add(new Improvement.Gain(duty, marginK.applyAsDouble(changed, duty) - now)));
        return new Improvement(candidate.id(), candidate.label(), gains);
    }
}

package headertank.calc.advice;

import headertank.calc.carspec.Resolved;
import headertank.calc.result.Improvement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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
        return Candidate.ALL.parallelStream()
                .flatMap(c -> c.change().apply(car).map(changed -> gained(c, changed, marginsNow, marginK)).stream())
                .filter(i -> i.gainK(needsItMost) >= LEAST_K)
                .sorted(Comparator.comparingDouble((Improvement i) -> i.gainK(needsItMost))
                        .reversed())
                .limit(most)
                .toList();
    }

    private static Improvement gained(
            Candidate candidate,
            Resolved changed,
            Map<String, Double> marginsNow,
            ToDoubleBiFunction<Resolved, String> marginK) {
        List<Improvement.Gain> gains = new ArrayList<>();
        marginsNow.forEach(
                (duty, now) -> gains.add(new Improvement.Gain(duty, marginK.applyAsDouble(changed, duty) - now)));
        return new Improvement(candidate.id(), candidate.label(), gains);
    }
}

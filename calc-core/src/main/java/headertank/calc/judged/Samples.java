package headertank.calc.judged;

import java.util.List;

/**
 * How many cars to sample.
 *
 * @param atOnce cars that are sampled at least, and each time that it is not sure
 * @param most cars that are sampled at most
 * @param turns probabilities at which a verdict turns [-]
 * @param seed seed of the samples
 */
public record Samples(int atOnce, int most, List<Double> turns, long seed) {
    public Samples {
        turns = List.copyOf(turns);
    }
}

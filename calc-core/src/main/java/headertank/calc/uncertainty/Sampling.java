package headertank.calc.uncertainty;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.rating.Plant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * Samples a car over what is not known of it: every value with a spread and every model factor, by a seeded
 * Latin hypercube. All duties see the same sampled cars, and all points of a duty the same deviates, each with the spread
 * that the models state for it. What is drawn for a field or a factor depends on its name and on the seed alone, so that a
 * change of one leaves the dice of all others as they lie; what was learned of the car only mixes them ({@link Correlated}). Samples are spread over all cores; each stays in its place and nothing is summed on the way,
 * so that which core had which changes no digit.
 */
public final class Sampling {

    /** Cars that are asked at a time, at least: enough to keep the cores busy. */
    private static final int ASKED_AT_LEAST = 16;

    private final Unknowns unknowns;
    private final double[][] deviates;
    private final boolean informed;

    /**
     * @param resolved the car
     * @param samples number of samples
     * @param seed seed of the samples; one more gives as many that are independent of them
     */
    public Sampling(Resolved resolved, int samples, long seed) {
        this.unknowns = new Unknowns(resolved);
        this.informed = false;
        int fields = unknowns.fields().size();
        long[] seeds = new long[unknowns.size()];
        for (int i = 0; i < seeds.length; i++) {
            String of = unknowns.isField(i) ? unknowns.key(i) : "model." + (i - fields);
            seeds[i] = 31 * seed + 1_000_003L * of.hashCode();
        }
        this.deviates = LatinHypercube.standardNormal(samples, seeds);
        Correlated.of(resolved, unknowns).ifPresent(l -> Arrays.stream(deviates).forEach(l::apply));
    }

    private Sampling(Unknowns unknowns, double[][] deviates) {
        this.unknowns = unknowns;
        this.deviates = deviates;
        this.informed = true;
    }

    /** @return these sampled cars and those, of the same car */
    public Sampling and(Sampling more) {
        double[][] all = Arrays.copyOf(deviates, deviates.length + more.deviates.length);
        System.arraycopy(more.deviates, 0, all, deviates.length, more.deviates.length);
        return new Sampling(unknowns, all);
    }

    /** @return whether only cars are sampled that agree with more than the values of the car */
    public boolean informed() {
        return informed;
    }

    /** @return how many cars are sampled */
    public int size() {
        return deviates.length;
    }

    /**
     * The sampled cars that agree with what is known of the real one: each stays with the chance that {@code weight} gives it.
     *
     * @param weight chance, 0 to 1, that what is known is seen on such a car
     * @param most number of cars to keep at most
     * @param seed seed of the chances
     * @return those that stay
     */
    public Sampling knowing(ToDoubleFunction<SampledCar> weight, int most, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<double[]> kept = new ArrayList<>();
        int asked = 0;
        while (asked < deviates.length && kept.size() < most) {
            double[][] next = Arrays.copyOfRange(
                    deviates, asked, Math.min(deviates.length, asked + Math.max(ASKED_AT_LEAST, most - kept.size())));
            List<Double> weights = each(next, weight::applyAsDouble, 0.0);
            for (int i = 0; i < next.length && kept.size() < most; i++) {
                if (random.nextDouble() < weights.get(i)) {
                    kept.add(next[i]);
                }
            }
            asked += next.length;
        }
        return new Sampling(unknowns, kept.toArray(double[][]::new));
    }

    /** @return what each sampled car answers; a car outside what a model accepts answers {@code failed} */
    public <T> List<T> each(Function<SampledCar, T> question, T failed) {
        return each(deviates, question, failed);
    }

    private <T> List<T> each(double[][] cars, Function<SampledCar, T> question, T failed) {
        return Arrays.stream(cars)
                .parallel()
                .map(z -> answer(question, z).orElse(failed))
                .toList();
    }

    /** @return what each sampled car answers; a car outside what a model accepts is left out */
    public <T> List<T> each(Function<SampledCar, T> question) {
        return Arrays.stream(deviates)
                .parallel()
                .map(z -> answer(question, z))
                .flatMap(Optional::stream)
                .toList();
    }

    private <T> Optional<T> answer(Function<SampledCar, T> question, double[] z) {
        try {
            return Optional.of(question.apply(new SampledCar(z)));
        } catch (OutOfRangeException outside) {
            return Optional.empty();
        }
    }

    /** One sampled car: its values are the same wherever it is, its models as far off as each point lets them be. */
    public final class SampledCar {
        private final Resolved values;
        private final double[] z;
        private ModelSpread lastSpread;
        private Plant last;

        private SampledCar(double[] z) {
            this.values = unknowns.values(z);
            this.z = z;
        }

        /**
         * @param change what is different about the car that is asked for
         * @param spread how far its models may be off
         * @return the same car, changed
         */
        public Plant changed(UnaryOperator<Resolved> change, ModelSpread spread) {
            return unknowns.plant(change.apply(values), z, spread);
        }

        /** @return the car where its models may be off so far */
        public Plant at(ModelSpread spread) {
            if (!spread.equals(lastSpread)) {
                last = unknowns.plant(values, z, spread);
                lastSpread = spread;
            }
            return last;
        }
    }
}

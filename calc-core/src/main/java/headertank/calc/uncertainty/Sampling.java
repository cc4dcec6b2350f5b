package headertank.calc.uncertainty;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Spread;
import headertank.calc.rating.Plant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.hipparchus.util.FastMath;

/**
 * Samples a car over what is not known of it: every value with a spread and every model factor, by a seeded
 * Latin hypercube. All duties see the same sampled cars, and all points of a duty the same deviates, each with the spread
 * that the models state for it. What is drawn for a field or a factor depends on its name and on the seed alone, so that a
 * change of one leaves the dice of all others as they lie. Samples are spread over all cores; each stays in its place and nothing is summed on the way,
 * so that which core had which changes no digit.
 */
public final class Sampling {

    private final Resolved resolved;
    private final List<BuildField> uncertain = new ArrayList<>();
    private final double[][] deviates;
    private final boolean informed;

    /**
     * @param resolved the car
     * @param samples number of samples
     * @param seed seed of the samples; one more gives as many that are independent of them
     */
    public Sampling(Resolved resolved, int samples, long seed) {
        this.resolved = resolved;
        for (BuildField f : BuildField.values()) {
            if (resolved.has(f) && resolved.spread(f).sigma() > 0 && f.kind() != FigureKind.COUNT) {
                uncertain.add(f);
            }
        }
        this.informed = false;
        long[] seeds = new long[uncertain.size() + ModelSpread.COUNT];
        for (int i = 0; i < seeds.length; i++) {
            String of = i < uncertain.size() ? uncertain.get(i).key() : "model." + (i - uncertain.size());
            seeds[i] = 31 * seed + 1_000_003L * of.hashCode();
        }
        this.deviates = LatinHypercube.standardNormal(samples, seeds);
    }

    private Sampling(Resolved resolved, List<BuildField> uncertain, double[][] deviates) {
        this.resolved = resolved;
        this.uncertain.addAll(uncertain);
        this.deviates = deviates;
        this.informed = true;
    }

    /** @return these sampled cars and those, of the same car */
    public Sampling and(Sampling more) {
        double[][] all = Arrays.copyOf(deviates, deviates.length + more.deviates.length);
        System.arraycopy(more.deviates, 0, all, deviates.length, more.deviates.length);
        return new Sampling(resolved, uncertain, all);
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
        List<Double> weights = each(weight::applyAsDouble, 0.0);
        SplittableRandom random = new SplittableRandom(seed);
        List<double[]> kept = new ArrayList<>();
        for (int i = 0; i < deviates.length; i++) {
            if (random.nextDouble() < weights.get(i) && kept.size() < most) {
                kept.add(deviates[i]);
            }
        }
        return new Sampling(resolved, uncertain, kept.toArray(double[][]::new));
    }

    /** @return what each sampled car answers; a car outside what a model accepts answers {@code failed} */
    public <T> List<T> each(Function<SampledCar, T> question, T failed) {
        return Arrays.stream(deviates)
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
        private final double[] model;
        private ModelSpread lastSpread;
        private Plant last;

        private SampledCar(double[] z) {
            double[] sampled = resolved.values();
            for (int i = 0; i < uncertain.size(); i++) {
                BuildField f = uncertain.get(i);
                Spread s = resolved.spread(f);
                double v = sampled[f.ordinal()];
                sampled[f.ordinal()] =
                        f.allowed().clamp(s.relative() ? v * FastMath.exp(s.sigma() * z[i]) : v + s.sigma() * z[i]);
            }
            this.values = resolved.withValues(sampled);
            this.model = Arrays.copyOfRange(z, uncertain.size(), z.length);
        }

        /**
         * @param change what is different about the car that is asked for
         * @param spread how far its models may be off
         * @return the same car, changed
         */
        public Plant changed(UnaryOperator<Resolved> change, ModelSpread spread) {
            return Plant.of(change.apply(values), spread.at(model));
        }

        /** @return the car where its models may be off so far */
        public Plant at(ModelSpread spread) {
            if (!spread.equals(lastSpread)) {
                last = Plant.of(values, spread.at(model));
                lastSpread = spread;
            }
            return last;
        }
    }
}

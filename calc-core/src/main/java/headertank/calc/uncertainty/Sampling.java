package headertank.calc.uncertainty;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.SiUnit;
import headertank.calc.quantity.Spread;
import headertank.calc.rating.Plant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.util.FastMath;

/**
 * Samples a car over what is not known of it: every value with a spread and every model factor, by a seeded
 * Latin hypercube. All duties see the same sampled cars. Samples are spread over all cores; each stays in its place and nothing is
 * summed on the way, so that which core had which changes no digit.
 */
public final class Sampling {

    private final Resolved resolved;
    private final List<BuildField> uncertain = new ArrayList<>();
    private final double[][] deviates;
    private final ModelSpread spread;

    /**
     * @param resolved the car
     * @param samples number of samples
     * @param seed seed of the samples
     * @param spread spreads of the models for this car
     */
    public Sampling(Resolved resolved, int samples, long seed, ModelSpread spread) {
        this.resolved = resolved;
        this.spread = spread;
        for (BuildField f : BuildField.values()) {
            if (resolved.has(f) && resolved.spread(f).sigma() > 0 && f.unit() != SiUnit.COUNT) {
                uncertain.add(f);
            }
        }
        this.deviates = LatinHypercube.standardNormal(samples, uncertain.size() + ModelSpread.COUNT, seed);
    }

    /** @return what each sampled car answers; a car outside what a model accepts answers {@code failed} */
    public <T> List<T> each(Function<Plant, T> question, T failed) {
        return Arrays.stream(deviates)
                .parallel()
                .map(z -> answer(question, z).orElse(failed))
                .toList();
    }

    /** @return what each sampled car answers; a car outside what a model accepts is left out */
    public <T> List<T> each(Function<Plant, T> question) {
        return Arrays.stream(deviates)
                .parallel()
                .map(z -> answer(question, z))
                .flatMap(Optional::stream)
                .toList();
    }

    private <T> Optional<T> answer(Function<Plant, T> question, double[] z) {
        try {
            return Optional.of(question.apply(plant(z)));
        } catch (OutOfRangeException outside) {
            return Optional.empty();
        }
    }

    private Plant plant(double[] z) {
        double[] values = resolved.values();
        for (int i = 0; i < uncertain.size(); i++) {
            BuildField f = uncertain.get(i);
            Spread s = resolved.spread(f);
            double v = values[f.ordinal()];
            values[f.ordinal()] =
                    f.allowed().clamp(s.relative() ? v * FastMath.exp(s.sigma() * z[i]) : v + s.sigma() * z[i]);
        }
        double[] model = Arrays.copyOfRange(z, uncertain.size(), z.length);
        return Plant.of(resolved.withValues(values), spread.at(model));
    }
}

package headertank.calc;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.SiUnit;
import headertank.calc.quantity.Spread;
import headertank.calc.rating.ModelFactors;
import headertank.calc.rating.Plant;
import headertank.calc.uncertainty.Distribution;
import headertank.calc.uncertainty.LatinHypercube;
import headertank.calc.verdict.DutyOutcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.util.FastMath;

/**
 * Samples the margins of a car over what is not known of it: every value with a spread and every model factor, by a seeded
 * Latin hypercube. All duties see the same sampled cars. Samples are spread over all cores; each stays in its place and nothing is
 * summed on the way, so that which core had which changes no digit.
 */
final class Sampling {

    private final Resolved resolved;
    private final List<BuildField> uncertain = new ArrayList<>();
    private final double[][] deviates;
    private final ModelFactors.Sigmas sigmas;

    /**
     * @param resolved the car
     * @param samples number of samples
     * @param seed seed of the samples
     * @param sigmas spreads of the models for this car
     */
    Sampling(Resolved resolved, int samples, long seed, ModelFactors.Sigmas sigmas) {
        this.resolved = resolved;
        this.sigmas = sigmas;
        for (BuildField f : BuildField.values()) {
            if (resolved.has(f) && resolved.spread(f).sigma() > 0 && f.unit() != SiUnit.COUNT) {
                uncertain.add(f);
            }
        }
        this.deviates = LatinHypercube.standardNormal(samples, uncertain.size() + ModelFactors.COUNT, seed);
    }

    /** @return the outcome with its sampled margin and probabilities */
    DutyOutcome sample(DutyOutcome nominal) {
        Duty duty = nominal.duty();
        double[][] margins = Arrays.stream(deviates)
                .parallel()
                .map(z -> DutyRater.sampledMargins(() -> plant(z), duty))
                .toArray(double[][]::new);
        double[] coolant = Arrays.stream(margins).mapToDouble(m -> m[0]).toArray();
        double[] boiling = Arrays.stream(margins).mapToDouble(m -> m[1]).toArray();
        return nominal.sampled(
                Distribution.of(coolant), Distribution.shareBelow(coolant, 0), Distribution.shareBelow(boiling, 0));
    }

    /** @return what each sampled car answers; a car outside what a model accepts is left out */
    <T> List<T> each(Function<Plant, T> question) {
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
        return Plant.of(resolved.withValues(values), ModelFactors.at(model, sigmas));
    }
}

package headertank.calc;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.SiUnit;
import headertank.calc.quantity.Spread;
import headertank.calc.rating.ModelFactors;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRating;
import headertank.calc.uncertainty.Distribution;
import headertank.calc.uncertainty.LatinHypercube;
import headertank.calc.verdict.DutyOutcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.util.FastMath;

/**
 * Samples the margins of a car over what is not known of it: every value with a spread and every model factor, by a seeded
 * Latin hypercube. All duties see the same sampled cars, and all points of a duty the same deviates, each with the spread that
 * the models state for it. Samples are spread over all cores; each stays in its place and nothing is summed on the way, so
 * that which core had which changes no digit.
 */
final class Sampling {

    private final Resolved resolved;
    private final List<BuildField> uncertain = new ArrayList<>();
    private final double[][] deviates;
    private final ModelSpread spread;

    /**
     * @param resolved the car
     * @param samples number of samples
     * @param seed seed of the samples
     */
    Sampling(Resolved resolved, int samples, long seed) {
        this.resolved = resolved;
        this.spread = new ModelSpread(resolved);
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
        Map<String, ModelFactors.Sigmas> sigmas = new HashMap<>();
        nominal.points().forEach(p -> sigmas.put(p.point().id(), spread.at(p)));
        String deciding = nominal.decidingPointId();
        double[][] margins = Arrays.stream(deviates)
                .parallel()
                .map(z -> DutyRater.sampledMargins(new SampledCar(z, sigmas), deciding, duty))
                .toArray(double[][]::new);
        double[] coolant = Arrays.stream(margins).mapToDouble(m -> m[0]).toArray();
        double[] boiling = Arrays.stream(margins).mapToDouble(m -> m[1]).toArray();
        return nominal.sampled(
                Distribution.of(coolant), Distribution.shareBelow(coolant, 0), Distribution.shareBelow(boiling, 0));
    }

    /**
     * @param at where the cars are asked, which says how far the models may be off
     * @return what each sampled car answers; a car outside what a model accepts is left out
     */
    <T> List<T> each(PointRating at, Function<Plant, T> question) {
        ModelFactors.Sigmas sigmas = spread.at(at);
        return Arrays.stream(deviates)
                .parallel()
                .map(z -> answer(question, z, sigmas))
                .flatMap(Optional::stream)
                .toList();
    }

    private <T> Optional<T> answer(Function<Plant, T> question, double[] z, ModelFactors.Sigmas sigmas) {
        try {
            return Optional.of(question.apply(plant(sampled(z), z, sigmas)));
        } catch (OutOfRangeException outside) {
            return Optional.empty();
        }
    }

    /** One sampled car: its values are the same wherever it is, its models as far off as each point lets them be. */
    private final class SampledCar implements Function<String, Plant> {
        private final double[] z;
        private final Map<String, ModelFactors.Sigmas> sigmas;
        private final Resolved values;
        private Plant last;
        private ModelFactors.Sigmas ofLast;

        private SampledCar(double[] z, Map<String, ModelFactors.Sigmas> sigmas) {
            this.z = z;
            this.sigmas = sigmas;
            this.values = sampled(z);
        }

        @Override
        public Plant apply(String pointId) {
            ModelFactors.Sigmas here = sigmas.get(pointId);
            if (!here.equals(ofLast)) {
                last = plant(values, z, here);
                ofLast = here;
            }
            return last;
        }
    }

    private Resolved sampled(double[] z) {
        double[] values = resolved.values();
        for (int i = 0; i < uncertain.size(); i++) {
            BuildField f = uncertain.get(i);
            Spread s = resolved.spread(f);
            double v = values[f.ordinal()];
            values[f.ordinal()] =
                    f.allowed().clamp(s.relative() ? v * FastMath.exp(s.sigma() * z[i]) : v + s.sigma() * z[i]);
        }
        return resolved.withValues(values);
    }

    private Plant plant(Resolved values, double[] z, ModelFactors.Sigmas sigmas) {
        double[] model = Arrays.copyOfRange(z, uncertain.size(), z.length);
        return Plant.of(values, ModelFactors.at(model, sigmas));
    }
}

package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.StandardDuties;
import headertank.calc.evidence.DriveLog;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.uncertainty.LatinHypercube;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Unknowns;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import org.hipparchus.util.FastMath;

/**
 * Whether a log comes out within the band of the car as it is known: sampled cars drive it on sampled days, and to their spread comes
 * what the model leaves of a right car ({@link LogLikelihood}). Eight of ten moments within 5 to 95 % are enough, for what is left lasts
 * and moments are no independent proofs (modelling choice).
 */
public final class Confirming {

    private static final int CARS = 64;
    private static final long SEED = 20261128L;
    private static final double NINE_OF_TEN = 1.645;
    private static final double ENOUGH = 0.8;

    private final DrivenLog driven;
    private final Unknowns unknowns;
    private final ModelSpread spread;

    private Confirming(Resolved car, DriveLog log) {
        this.driven = new DrivenLog(log, car);
        this.unknowns = new Unknowns(car);
        this.spread = ModelSpread.of(car, PointRater.rate(Plant.of(car), StandardDuties.STREET.point("hill")));
    }

    /** @return whether enough moments of the log lie within the band of the car */
    public static boolean of(Resolved car, DriveLog log) {
        Confirming confirming = new Confirming(car, log);
        long[] seeds = LongStream.range(0, confirming.unknowns.size() + LogLikelihood.LOG_NUISANCES)
                .map(i -> SEED + i)
                .toArray();
        List<double[]> shown = Arrays.stream(LatinHypercube.standardNormal(CARS, seeds))
                .parallel()
                .map(confirming::shown)
                .filter(Objects::nonNull)
                .toList();
        return confirming.holds(shown);
    }

    private double[] shown(double[] deviates) {
        double[] day = Arrays.copyOfRange(deviates, unknowns.size(), deviates.length);
        try {
            Plant plant = new Candidate(unknowns, spread, unknowns.mixed(Arrays.copyOf(deviates, unknowns.size())))
                    .plant(r -> r.with(BuildField.AMBIENT, driven.ambientK(day[0])));
            return driven.answer(plant, day[0], LogLikelihood.day(day)).shownK();
        } catch (OutOfRangeException beyond) {
            return null;
        }
    }

    private boolean holds(List<double[]> shown) {
        List<Double> read = driven.stretches().readings();
        int seen = 0;
        int inside = 0;
        for (int b = 0; b < read.size() && !shown.isEmpty(); b++) {
            if (!Double.isNaN(read.get(b))) {
                int at = b;
                double mean = shown.stream().mapToDouble(s -> s[at]).average().orElseThrow();
                double square = shown.stream()
                        .mapToDouble(s -> (s[at] - mean) * (s[at] - mean))
                        .average()
                        .orElseThrow();
                double sigma = FastMath.sqrt(square + Noise.USUAL.varianceK2());
                seen++;
                inside += Math.abs(read.get(b) - mean) <= NINE_OF_TEN * sigma ? 1 : 0;
            }
        }
        return seen > 0 && inside >= ENOUGH * seen;
    }
}

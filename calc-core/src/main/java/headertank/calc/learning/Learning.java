package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.carspec.HowKnown;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.ModelFactor;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.StandardDuties;
import headertank.calc.evidence.CoreSheet;
import headertank.calc.evidence.DriveLog;
import headertank.calc.evidence.Evidence;
import headertank.calc.evidence.FanSheet;
import headertank.calc.evidence.NeverHot;
import headertank.calc.evidence.PumpSheet;
import headertank.calc.evidence.SettledReading;
import headertank.calc.evidence.WorkshopReadings;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Unknowns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What follows from evidence for what is not known of a car. */
public final class Learning {

    private final Resolved car;
    private final Unknowns unknowns;
    private final ModelSpread spread;
    private final int[] learnable;
    private final List<Likelihood> likelihoods = new ArrayList<>();
    private final List<Learned.NotHot> notHot = new ArrayList<>();
    private HowKnown known = HowKnown.FROM_ONE_READING;
    private int nuisances;

    private Learning(Resolved car) {
        this.car = car;
        this.unknowns = new Unknowns(car);
        this.spread = ModelSpread.of(car, PointRater.rate(Plant.of(car), StandardDuties.STREET.point("hill")));
        this.learnable =
                IntStream.range(0, unknowns.size()).filter(this::isLearnable).toArray();
    }

    /**
     * @param car the car as it is known without the evidence
     * @param evidence what was seen, in any order; the same gives the same digits
     * @return what is known of it now
     * @throws IllegalArgumentException when the car as it is expected could not have shown anything of the kind
     */
    public static Learned of(Resolved car, List<Evidence> evidence) {
        Learning learning = new Learning(car);
        evidence.forEach(learning::add);
        return learning.learned();
    }

    /** The day and the limits are the shop's to say; how hard the driver drives is learned. */
    private boolean isLearnable(int place) {
        FieldGroup part = unknowns.part(place);
        return !unknowns.isField(place) || part != FieldGroup.USE && part != FieldGroup.LIMIT;
    }

    private void add(Evidence seen) {
        if (seen instanceof NeverHot never) {
            notHot.add(new Learned.NotHot(never.upToK(), never.summers()));
            return;
        }
        if (seen instanceof DriveLog) {
            known = HowKnown.FROM_A_RUN;
        }
        Likelihood likelihood = likelihood(seen);
        likelihoods.add(likelihood);
        nuisances += likelihood.nuisances();
    }

    private Likelihood likelihood(Evidence seen) {
        if (seen instanceof SettledReading reading) {
            return new SettledLikelihood(reading);
        }
        if (seen instanceof WorkshopReadings readings) {
            return new WorkshopLikelihood(readings, car);
        }
        if (seen instanceof DriveLog log) {
            return new LogLikelihood(log, car);
        }
        if (seen instanceof FanSheet sheet) {
            return new FanSheetLikelihood(sheet);
        }
        if (seen instanceof PumpSheet sheet) {
            return new PumpSheetLikelihood(sheet);
        }
        return new SheetLikelihood((CoreSheet) seen);
    }

    private Learned learned() {
        if (likelihoods.isEmpty()) {
            return new Learned(Optional.of(car.build()), List.of(), List.of(), notHot, 0, HowKnown.FROM_ONE_READING);
        }
        Posterior posterior = Posterior.of(learnable.length + nuisances, this::residuals, noise());
        List<Learned.Factor> factors = new ArrayList<>();
        List<Double> covariance = new ArrayList<>();
        for (int i = 0; i < learnable.length; i++) {
            factors.add(factor(learnable[i], posterior.mean(i), posterior.left(i)));
            for (int j = 0; j <= i; j++) {
                covariance.add(posterior.covariance(i, j));
            }
        }
        return new Learned(Optional.of(car.build()), factors, covariance, notHot, posterior.unexplainedK(), known);
    }

    /** @return what may be left of all that was seen, in its order */
    private Noise noise() {
        Noise noise = Noise.independent();
        Candidate expected = new Candidate(unknowns, spread, new double[unknowns.size()]);
        int from = 0;
        try {
            for (Likelihood l : likelihoods) {
                double[] r = l.residuals(expected, new double[l.nuisances()]);
                if (r == null) {
                    break;
                }
                if (l.leftover().isPresent()) {
                    noise = noise.with(from, l.leftover().get());
                }
                from += r.length;
            }
        } catch (OutOfRangeException beyond) {
            return noise;
        }
        return noise;
    }

    private Learned.Factor factor(int place, double moved, double left) {
        if (!unknowns.isField(place)) {
            ModelFactor f = unknowns.factor(place);
            return new Learned.Factor(f.key(), f.part(), 0, spread.sigma(f), true, moved, left);
        }
        BuildField field = unknowns.fields().get(place);
        return new Learned.Factor(
                field.key(),
                field.group(),
                car.value(field),
                car.spread(field).sigma(),
                car.spread(field).relative(),
                moved,
                left);
    }

    /** @return the residuals of all evidence at these unknowns; null where the car has no answer to a piece of it */
    private double[] residuals(double[] x) {
        double[] z = new double[unknowns.size()];
        for (int i = 0; i < learnable.length; i++) {
            z[learnable[i]] = x[i];
        }
        double[] all = new double[0];
        int next = learnable.length;
        try {
            Candidate candidate = new Candidate(unknowns, spread, z);
            for (Likelihood l : likelihoods) {
                double[] r = l.residuals(candidate, Arrays.copyOfRange(x, next, next + l.nuisances()));
                if (r == null) {
                    return null;
                }
                next += l.nuisances();
                int end = all.length;
                all = Arrays.copyOf(all, end + r.length);
                System.arraycopy(r, 0, all, end, r.length);
            }
        } catch (OutOfRangeException beyond) {
            return null;
        }
        return all;
    }
}

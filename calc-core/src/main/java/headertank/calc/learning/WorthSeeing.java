package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.evidence.WorkshopReadings;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.rating.SteadySolver;
import headertank.calc.result.IdleExpectation.Figure;
import headertank.calc.result.NextEvidence;
import headertank.calc.result.NextEvidence.Deed;
import headertank.calc.transients.IdleWarmUp;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Unknowns;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.FastMath;

/**
 * What to find out next of a car: each thing that a shop can do is done on the car as it is known, by the likelihood that would learn from
 * it, and what would be left of each duty's margin is that of the straight line through it: with J the slopes of what would be seen over
 * what the reading may be off and g those of the margin, both against what is not known now, {@code g'(I + J'J)^-1 g} of the variance
 * {@code g'g}. What would be read does not count, only how well it would tell. What a reading is good for is a modelling choice.
 */
public final class WorthSeeing {

    private static final double STEP = 0.1;
    private static final double FROM_5_TO_95 = 2 * 1.645;
    private static final double HOT_K = Physics.kelvin(95);

    /** One reading of a value: its field and one standard deviation, a share of it or in its own unit. */
    private record Reading(BuildField field, double sigma, boolean relative) {}

    private static final Map<Deed, List<Reading>> READINGS = new EnumMap<>(Map.of(
            Deed.CLAMP_METER, List.of(new Reading(BuildField.FAN_CURRENT, 0.03, true)),
            Deed.BUCKET_AND_STOPWATCH, List.of(new Reading(BuildField.PUMP_FLOW, 0.07, true)),
            Deed.REFRACTOMETER, List.of(new Reading(BuildField.COOLANT_GLYCOL, 0.02, false)),
            Deed.PRESSURE_TESTER,
                    List.of(
                            new Reading(BuildField.CAP_PRESSURE, 0.03, true),
                            new Reading(BuildField.CAP_HELD, 0.03, false)),
            Deed.BLADE_TACHOMETER, List.of(new Reading(BuildField.FAN_RATIO, 0.02, true)),
            Deed.WEIGHING, List.of(new Reading(BuildField.CAR_MASS, 0.01, true))));

    private static final double GRID_SIGMA = 0.07;

    /** Less is not worth a walk to the car [K]; modelling choice. */
    private static final double LEAST_K = 0.05;

    private final Resolved car;
    private final ToDoubleBiFunction<Plant, Duty> marginK;
    private final Unknowns unknowns;
    private final ModelSpread spread;

    private WorthSeeing(Resolved car, ToDoubleBiFunction<Plant, Duty> marginK) {
        this.car = car;
        this.marginK = marginK;
        this.unknowns = new Unknowns(car);
        this.spread = ModelSpread.of(car, PointRater.rate(Plant.of(car), StandardDuties.STREET.point("hill")));
    }

    /**
     * @param car the car as it is known
     * @param duties what it is for
     * @param marginK coolant margin of a car at a duty [K]
     * @return what can be done, what narrows most first; without what narrows nothing
     */
    public static List<NextEvidence> of(Resolved car, List<Duty> duties, ToDoubleBiFunction<Plant, Duty> marginK) {
        return new WorthSeeing(car, marginK).ranked(duties);
    }

    private List<NextEvidence> ranked(List<Duty> duties) {
        Map<Duty, RealVector> margins = new LinkedHashMap<>();
        duties.forEach(d -> margins.put(d, slopesOfMargin(d)));
        List<NextEvidence> found = new ArrayList<>();
        for (Deed deed : Deed.values()) {
            Map<String, Double> narrows = new LinkedHashMap<>();
            RealMatrix same = deed == Deed.LOGGED_DRIVE ? null : covariance(deed, duties.get(0));
            margins.forEach((duty, g) -> {
                RealMatrix left = same == null ? covariance(deed, duty) : same;
                narrows.put(
                        duty.id(),
                        FROM_5_TO_95 * Math.max(0, g.getNorm() - FastMath.sqrt(g.dotProduct(left.operate(g)))));
            });
            NextEvidence next = new NextEvidence(deed, narrows);
            if (next.inAllK() >= LEAST_K) {
                found.add(next);
            }
        }
        found.sort(Comparator.comparingDouble(NextEvidence::inAllK).reversed());
        return List.copyOf(found);
    }

    private RealVector slopesOfMargin(Duty duty) {
        double[] slopes = IntStream.range(0, unknowns.size())
                .parallel()
                .mapToDouble(
                        i -> slope(z -> marginK.applyAsDouble(candidate(z).plant(UnaryOperator.identity()), duty), i))
                .toArray();
        return MatrixUtils.createRealVector(slopes);
    }

    private double slope(ToDoubleFunction<double[]> of, int i) {
        double[] up = new double[unknowns.size()];
        double[] down = new double[unknowns.size()];
        up[i] = 2 * STEP;
        down[i] = -2 * STEP;
        try {
            return (of.applyAsDouble(up) - of.applyAsDouble(down)) / (4 * STEP);
        } catch (OutOfRangeException beyond) {
            return 0;
        }
    }

    private Candidate candidate(double[] independent) {
        return new Candidate(unknowns, spread, unknowns.mixed(independent));
    }

    /** @return what would be left of the unknowns, each of variance one now */
    private RealMatrix covariance(Deed deed, Duty duty) {
        Likelihood seen = likelihood(deed, duty);
        int n = unknowns.size();
        int all = n + seen.nuisances();
        double[] expected = seen.residuals(candidate(new double[n]), new double[seen.nuisances()]);
        if (expected == null || expected.length == 0) {
            return MatrixUtils.createRealIdentityMatrix(n);
        }
        double[][] columns = IntStream.range(0, all)
                .parallel()
                .mapToObj(i -> column(seen, expected, i, n))
                .toArray(double[][]::new);
        Noise noise = seen.leftover().map(l -> Noise.independent().with(0, l)).orElseGet(Noise::independent);
        RealMatrix transposed = MatrixUtils.createRealMatrix(noise.independent(columns));
        RealMatrix normal = transposed.multiplyTransposed(transposed).add(MatrixUtils.createRealIdentityMatrix(all));
        return new CholeskyDecomposition(normal, 1e-9, 1e-12)
                .getSolver()
                .getInverse()
                .getSubMatrix(0, n - 1, 0, n - 1);
    }

    private double[] column(Likelihood seen, double[] expected, int i, int n) {
        double[] slope = new double[expected.length];
        if (i < n && unknowns.isField(i) && isOfTheDay(unknowns.part(i))) {
            return slope;
        }
        double[] z = new double[n];
        double[] nuisance = new double[seen.nuisances()];
        if (i < n) {
            z[i] = STEP;
        } else {
            nuisance[i - n] = STEP;
        }
        try {
            double[] aside = seen.residuals(candidate(z), nuisance);
            for (int k = 0; aside != null && k < slope.length; k++) {
                slope[k] = (aside[k] - expected[k]) / STEP;
            }
        } catch (OutOfRangeException beyond) {
            return slope;
        }
        return slope;
    }

    private static boolean isOfTheDay(FieldGroup part) {
        return part == FieldGroup.USE || part == FieldGroup.LIMIT;
    }

    private Likelihood likelihood(Deed deed, Duty duty) {
        return switch (deed) {
            case LOGGED_DRIVE -> new LogLikelihood(TenMinutes.of(car, duty), car);
            case COLD_START -> coldStart();
            case ANEMOMETER_GRID -> (candidate, nuisance) -> new double[] {FastMath.log(air(candidate)) / GRID_SIGMA};
            default -> (candidate, nuisance) -> readings(deed, candidate);
        };
    }

    private Likelihood coldStart() {
        double ambient = Physics.kelvin(20);
        IdleWarmUp expected = IdleWarmUp.of(Plant.of(car.with(BuildField.AMBIENT, ambient)));
        Map<Figure, Double> read = new EnumMap<>(Figure.class);
        for (Figure f : Figure.values()) {
            expected.figure(f).ifPresent(v -> read.put(f, v));
        }
        return read.isEmpty()
                ? (candidate, nuisance) -> new double[0]
                : new WorkshopLikelihood(new WorkshopReadings(ambient, read), car);
    }

    /** Air through the core of the standing car with its fans on; 1 without any [W/K]. */
    private static double air(Candidate candidate) {
        Plant plant = candidate.plant(UnaryOperator.identity());
        double ambient = plant.resolved().value(BuildField.AMBIENT);
        return Math.max(
                1,
                new SteadySolver(plant, IdleWarmUp.point(plant.resolved()))
                        .cooling(HOT_K, ambient, 1, 1)
                        .airCapacityWPerK());
    }

    private double[] readings(Deed deed, Candidate candidate) {
        Resolved values = candidate.plant(UnaryOperator.identity()).resolved();
        return READINGS.get(deed).stream()
                .filter(r -> unknowns.place(r.field().key()) >= 0)
                .mapToDouble(r -> r.relative()
                        ? FastMath.log(values.value(r.field())) / r.sigma()
                        : values.value(r.field()) / r.sigma())
                .toArray();
    }
}

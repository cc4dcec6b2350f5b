package headertank.calc.diagnosis;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.cause.Cause;
import headertank.calc.cause.Chance;
import headertank.calc.cause.Fault;
import headertank.calc.cause.Inquiry;
import headertank.calc.cause.Observation;
import headertank.calc.cause.Sighting;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.StandardDuties;
import headertank.calc.engine.EngineFactors;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.ModelFactors;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.rating.SteadySolver;
import headertank.calc.result.Balance;
import headertank.calc.transients.RunSolver;
import headertank.calc.uncertainty.LatinHypercube;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Unknowns;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.LongStream;

/**
 * An invented car that came back hot, with the truth. The car is drawn from what is not known of it by other dice than the ranking's, its
 * severity is any, a load that ends early is driven as a run over time, its driver stops at another place than the ranking believes,
 * answers are given as often as the causes say and then blurred, some are wrong and many are missing.
 */
final class HotCase {

    /** How often a driver can answer a question of the desk. */
    private static final double ANSWERED = 0.85;

    private static final double WRONG = 0.05;
    private static final List<Cause> CAUSES = ServiceLoader.load(Cause.class).stream()
            .map(ServiceLoader.Provider::get)
            .sorted(Comparator.comparing(Cause::id))
            .toList();

    final Build build;
    final Cause truth;
    final Sighting seen;
    private final double blur;
    private final SplittableRandom random;

    private HotCase(Build build, Cause truth, Sighting seen, double blur, SplittableRandom random) {
        this.build = build;
        this.truth = truth;
        this.seen = seen;
        this.blur = blur;
        this.random = random;
    }

    /** So many cases, those of one seed the same for ever. */
    static List<HotCase> cases(Rater rater, int number, boolean reading, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<HotCase> cases = new ArrayList<>();
        while (cases.size() < number) {
            try {
                drawn(rater, reading, random.split()).ifPresent(cases::add);
            } catch (OutOfRangeException beyond) {
                continue;
            }
        }
        return cases;
    }

    /** Empty for a car that nobody would bring back. */
    private static Optional<HotCase> drawn(Rater rater, boolean reading, SplittableRandom random) {
        int which = random.nextInt(3);
        Build build = List.of(Builds.road(), Builds.track(), Builds.drift()).get(which);
        Duty duty = List.of(StandardDuties.STREET, StandardDuties.TRACK, StandardDuties.DRIFT)
                .get(which);
        OperatingPoint point = duty.points().get(random.nextInt(duty.points().size()));
        double ambient = Physics.kelvin(15 + 22 * random.nextDouble());
        Resolved car = rater.resolve(build).with(BuildField.AMBIENT, ambient);
        Sighting nothing = new Sighting(
                duty, point.id(), OptionalDouble.of(ambient), OptionalDouble.empty(), Optional.empty(), Set.of());
        Cause truth = byPrior(car, nothing, random);
        double severity = random.nextDouble();
        Unknowns unknowns = new Unknowns(car);
        double[] z = LatinHypercube.standardNormal(
                1,
                LongStream.range(0, unknowns.size()).map(i -> random.nextLong()).toArray())[0];
        ModelSpread spread = ModelSpread.of(car, PointRater.rate(Plant.of(car), point));
        Fault fault = truth.on(Fault.none(unknowns.values(z)), severity);
        Plant plant = heated(unknowns.plant(fault.car(), z, spread), fault.heat());
        double limit = car.value(BuildField.COOLANT_LIMIT);
        double coolant = coolantK(plant, duty, point, fault.airInK());
        double more = plant.factors().gaugeOffsetK() + fault.gaugeK();
        double stop = limit + 2 + 20 * random.nextDouble();
        double shown = Math.min(coolant + more, stop) + 2 * gauss(random);
        double reached = Math.min(coolant, stop - more);
        boolean steam = reached > plant.boilingK() + fault.boilingK() - 3 + 3 * gauss(random);
        if (!(shown > limit - 5 || steam) || shown > 430) {
            return Optional.empty();
        }
        double blur = 0.3 * random.nextDouble();
        Set<Observation> observed = EnumSet.noneOf(Observation.class);
        HotCase told = new HotCase(build, truth, nothing, blur, random);
        for (Inquiry q : Inquiry.values()) {
            if (q.isWord() && q != Inquiry.NEEDLE && random.nextDouble() < ANSWERED) {
                observed.add(
                        switch (q) {
                            case LAMP ->
                                reached > limit + 6 + 4 * gauss(random) ? Observation.LAMP_ON : Observation.LAMP_OFF;
                            case STEAM -> steam ? Observation.STEAM_SEEN : Observation.STEAM_NONE;
                            default -> told.answer(q);
                        });
            }
        }
        if (!reading) {
            observed.add(
                    shown > limit + 3
                            ? Observation.NEEDLE_RED
                            : shown > limit - 8 ? Observation.NEEDLE_HIGH : Observation.NEEDLE_NORMAL);
        }
        return Optional.of(new HotCase(
                build,
                truth,
                new Sighting(
                        duty,
                        point.id(),
                        OptionalDouble.of(ambient),
                        reading ? OptionalDouble.of(Math.rint(shown - 273.15) + 273.15) : OptionalDouble.empty(),
                        Optional.empty(),
                        observed),
                blur,
                random));
    }

    private static Cause byPrior(Resolved car, Sighting seen, SplittableRandom random) {
        double all = CAUSES.stream().mapToDouble(c -> c.prior(car, seen)).sum();
        double left = all * random.nextDouble();
        for (Cause c : CAUSES) {
            left -= c.prior(car, seen);
            if (left <= 0) {
                return c;
            }
        }
        return CAUSES.get(CAUSES.size() - 1);
    }

    private static double coolantK(Plant plant, Duty duty, OperatingPoint point, double airInK) {
        Plant there = airInK == 0
                ? plant
                : Plant.of(
                        plant.resolved()
                                .with(BuildField.AMBIENT, plant.resolved().value(BuildField.AMBIENT) + airInK),
                        plant.factors());
        if (duty.schedule().isPresent() && !point.idles()) {
            return RunSolver.run(there, duty).peaks().coolantK();
        }
        return new SteadySolver(there, point).solve() instanceof Balance.Steady s ? s.engineOutK() : 500;
    }

    private static Plant heated(Plant plant, double heat) {
        ModelFactors f = plant.factors();
        return Plant.of(
                plant.resolved(),
                new ModelFactors(
                        f.radiator(),
                        new EngineFactors(
                                f.engine().coolantShare() * heat,
                                f.engine().friction(),
                                f.engine().fuelHeat(),
                                f.engine().loadExponent()),
                        f.air(),
                        f.liquid(),
                        f.demand(),
                        f.metal(),
                        f.gaugeOffsetK()));
    }

    /** What a test shows, or a driver says. */
    Observation answer(Inquiry q) {
        List<Observation> all = Observation.of(q);
        if (random.nextDouble() < WRONG && !q.isTest()) {
            return all.get(random.nextInt(all.size()));
        }
        List<Chance> signs = truth.signs();
        double left = random.nextDouble();
        double unsure = q.isTest() ? 0 : blur;
        for (Observation o : all) {
            left -= (1 - unsure) * o.share(signs) + unsure * o.share(List.of());
            if (left <= 0) {
                return o;
            }
        }
        return all.get(all.size() - 1);
    }

    private static double gauss(SplittableRandom random) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }
}

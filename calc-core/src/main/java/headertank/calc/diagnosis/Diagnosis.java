package headertank.calc.diagnosis;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.cause.Cause;
import headertank.calc.cause.Inquiry;
import headertank.calc.cause.Observation;
import headertank.calc.cause.Ranking;
import headertank.calc.cause.Sighting;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.ThermostatFitting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.hipparchus.util.FastMath;

/** Ranks causes by what was seen, and tests by what they are expected to tell. */
public final class Diagnosis {

    /** A cause this likely needs no further test before somebody looks for it [-]; modelling choice. */
    public static final double SETTLED = 0.75;

    /** Sampled cars for each severity: with words alone only their rough heat counts. */
    private static final int CARS_FOR_WORDS = 5;

    private static final int CARS_FOR_A_READING = 16;

    /** Evidence below this factor is barely worth mentioning, see the package of causes [-]. */
    private static final double WORTH_MENTIONING = FastMath.sqrt(10);

    private static final int MOST_TOGETHER = 3;

    /** What is less likely than this share of the likeliest is not named together with it [-]; modelling choice. */
    private static final double NAMED_TOGETHER = 0.25;

    /** A test that is expected to tell less than this is not worth its minutes [bit]; modelling choice. */
    private static final double LEAST_BITS = 0.02;

    private Diagnosis() {}

    /**
     * @param car the car as it is known
     * @param seen what was seen
     * @param causes what may be behind it
     * @param seed of the sampled cars
     * @return the ranking; the same for the same arguments
     * @throws IllegalArgumentException when the car can have none of the causes
     */
    public static Ranking of(Resolved car, Sighting seen, List<Cause> causes, long seed) {
        Resolved thatDay = seen.ambientK().isPresent()
                ? car.with(BuildField.AMBIENT, seen.ambientK().getAsDouble())
                : car;
        HeatStates states =
                new HeatStates(thatDay, seen, seen.shownK().isPresent() ? CARS_FOR_A_READING : CARS_FOR_WORDS, seed);
        double limit = car.value(BuildField.COOLANT_LIMIT);
        List<Suspicion> suspicions = causes.stream()
                .map(c -> suspicion(c, thatDay, seen, states, limit))
                .filter(Objects::nonNull)
                .toList();
        if (suspicions.isEmpty()) {
            throw new IllegalArgumentException("the car can have none of the causes");
        }
        double[] posterior = normalized(
                suspicions.stream().mapToDouble(s -> s.prior() * s.likelihood()).toArray());
        double[] prior =
                normalized(suspicions.stream().mapToDouble(Suspicion::prior).toArray());
        List<Ranking.Ranked> ranked = new ArrayList<>();
        for (int i = 0; i < posterior.length; i++) {
            ranked.add(ranked(suspicions, i, prior, posterior[i]));
        }
        ranked.sort(Comparator.comparingDouble(Ranking.Ranked::posterior).reversed());
        List<Ranking.NextTest> next = tests(thatDay, seen, suspicions, posterior);
        List<Ranking.Answer> answers = answers(suspicions, posterior);
        boolean settled =
                answers.get(0).posterior() >= SETTLED && (ranked.get(0).posterior() >= SETTLED || next.isEmpty());
        return new Ranking(ranked, answers, settled, next);
    }

    private static Suspicion suspicion(Cause cause, Resolved car, Sighting seen, HeatStates states, double limitK) {
        double prior = cause.prior(car, seen);
        if (prior <= 0) {
            return null;
        }
        List<List<Heat>> heats = states.of(cause);
        return heats.stream().allMatch(List::isEmpty) ? null : new Suspicion(cause, prior, seen, heats, limitK);
    }

    private static double[] normalized(double[] parts) {
        double sum = 0;
        for (double p : parts) {
            sum += p;
        }
        double[] shares = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            shares[i] = parts[i] / sum;
        }
        return shares;
    }

    private static Ranking.Ranked ranked(List<Suspicion> all, int place, double[] prior, double posterior) {
        Suspicion s = all.get(place);
        List<Ranking.Clue> clues = new ArrayList<>();
        for (int p = 0; p < s.pieces().size(); p++) {
            double others = 0;
            for (int i = 0; i < all.size(); i++) {
                others += i == place ? 0 : prior[i] * all.get(i).pieces().get(p).likelihood();
            }
            double without = others / (1 - prior[place]);
            Suspicion.Piece piece = s.pieces().get(p);
            if (without > 0) {
                clues.add(new Ranking.Clue(piece.what(), piece.likelihood() / without));
            }
        }
        clues.sort(Comparator.comparingDouble((Ranking.Clue c) -> Math.abs(FastMath.log(c.timesLikelier())))
                .reversed());
        return new Ranking.Ranked(
                s.cause().id(),
                s.cause().name(),
                s.cause().source(),
                prior[place],
                posterior,
                s.cause().amount(s.severity()),
                clues);
    }

    private static List<Ranking.Answer> answers(List<Suspicion> all, double[] posterior) {
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < posterior.length; i++) {
            left.add(i);
        }
        left.sort(Comparator.comparingDouble((Integer i) -> posterior[i]).reversed());
        List<Ranking.Answer> answers = new ArrayList<>();
        while (!left.isEmpty()) {
            int first = left.get(0);
            List<Integer> members = left.stream()
                    .filter(i -> posterior[i] >= NAMED_TOGETHER * posterior[first]
                            && isBarelyWorthMentioning(
                                    all.get(i).likelihood() / all.get(first).likelihood()))
                    .limit(MOST_TOGETHER)
                    .toList();
            answers.add(new Ranking.Answer(
                    members.stream().map(i -> all.get(i).cause().id()).toList(),
                    members.stream().mapToDouble(i -> posterior[i]).sum()));
            left.removeAll(members);
        }
        answers.sort(Comparator.comparingDouble(Ranking.Answer::posterior).reversed());
        return answers;
    }

    private static boolean isBarelyWorthMentioning(double ratio) {
        return ratio < WORTH_MENTIONING && ratio > 1 / WORTH_MENTIONING;
    }

    private static int top(double[] posterior) {
        int top = 0;
        for (int i = 1; i < posterior.length; i++) {
            if (posterior[i] > posterior[top]) {
                top = i;
            }
        }
        return top;
    }

    private static List<Ranking.NextTest> tests(
            Resolved car, Sighting seen, List<Suspicion> suspicions, double[] posterior) {
        List<Ranking.NextTest> tests = new ArrayList<>();
        for (Inquiry q : Inquiry.values()) {
            if (q.isTest() && !seen.answers(q) && hasPlaceOn(car, q)) {
                Ranking.NextTest test = test(q, suspicions, posterior);
                if (test.bits() >= LEAST_BITS) {
                    tests.add(test);
                }
            }
        }
        tests.sort(Comparator.comparingDouble(Ranking.NextTest::bitsPerMinute).reversed());
        return tests;
    }

    private static Ranking.NextTest test(Inquiry question, List<Suspicion> suspicions, double[] posterior) {
        double left = 0;
        List<Ranking.Meaning> outcomes = new ArrayList<>();
        for (Observation o : Observation.of(question)) {
            double[] joint = new double[posterior.length];
            double chance = 0;
            for (int i = 0; i < joint.length; i++) {
                joint[i] = posterior[i] * suspicions.get(i).share(o);
                chance += joint[i];
            }
            double[] then = normalized(joint);
            left += chance * entropyBits(then);
            int top = top(then);
            outcomes.add(
                    new Ranking.Meaning(o, chance, suspicions.get(top).cause().name(), then[top]));
        }
        outcomes.sort(Comparator.comparingDouble(Ranking.Meaning::chance).reversed());
        return new Ranking.NextTest(question, Math.max(0, entropyBits(posterior) - left), outcomes);
    }

    private static double entropyBits(double[] shares) {
        double bits = 0;
        for (double p : shares) {
            bits -= p > 0 ? p * FastMath.log(p) / FastMath.log(2) : 0;
        }
        return bits;
    }

    private static boolean hasPlaceOn(Resolved car, Inquiry q) {
        return switch (q) {
            case FAN_RUN -> !car.is(BuildField.FAN_DRIVE, FanDrive.NONE);
            case FAN_START, FORCED_FAN -> car.is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC);
            case POT -> car.is(BuildField.THERMOSTAT, ThermostatFitting.FITTED);
            default -> true;
        };
    }
}

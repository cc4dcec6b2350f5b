package headertank.calc.judged;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.YesNo;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.oil.OilBalance;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.result.PointRating;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Sampling;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.hipparchus.util.FastMath;

/**
 * What is known of a car that no ruler measures: that its maker built it so, and that it has not run hot. Both say something of
 * every quantity at once, so they weigh the sampled cars and change no value.
 *
 * <p><i>Never hot</i>: on a day as hot as that, a sampled car that passes its limit by more than 3 K in {@link
 * StandardDuties#STREET} would have shown it on its gauge. That owner may not have met hill, jam and heat together: in one summer of four
 * (modelling choice), so such a car stays with a chance of 0.25 to the power of the summers. <i>As built</i>: makers try their cars
 * in the heat. In 1937 one wanted no boiling below 40 to 42 deg C at full throttle at 20 and at 60 miles an hour, another below
 * 40.5, a third in 1939 below 40 on a long hill (papers of an English car maker's experimental department, reports of 24 November
 * 1937 and 16 June 1939); today it is 100 F, 38 deg C, on hill and in jam with the air conditioning on (common practice, no source).
 * So 38 deg C counts for all. A sampled car, clean as it left the works, whose coolant passes its limit there, or its oil the 130 deg C
 * that {@link OilBalance} is careful from, stays with a chance of 0.05. Where hardly a sampled car agrees, the evidence and the build
 * contradict each other and the evidence is left out.
 */
final class Censored {

    /** Evidence that fewer sampled cars than this agree with is left out [-]; modelling choice. */
    static final double LEAST_SHARE = 0.02;

    /** Sampled cars are drawn anew so often when few of them agree. */
    private static final int ROUNDS = 4;

    private static final double NOTICED_K = 3;
    private static final double NOT_MET_IN_A_SUMMER = 0.25;
    private static final double MADE_SO_ALL_THE_SAME = 0.05;
    private static final double MAKERS_DAY_K = Physics.kelvin(38);
    private static final Duty DUTY = StandardDuties.STREET;
    private static final int COOLANT = 0;
    private static final int OIL = 2;

    private final Resolved car;
    private final ModelSpread spread;

    private Censored(Resolved car) {
        this.car = car;
        PointRating hill = PointRater.rate(Plant.of(car), DUTY.point("hill"));
        this.spread = ModelSpread.of(car, hill);
    }

    /** @return whether anything of the kind is known of this car */
    private static boolean isKnown(Resolved car) {
        return car.is(BuildField.AS_BUILT, YesNo.YES) || !notHot(car).isEmpty();
    }

    /** What the owner said with the car, and what was learned since. */
    private static List<Learned.NotHot> notHot(Resolved car) {
        List<Learned.NotHot> all = new ArrayList<>(car.learned().notHot());
        if (car.has(BuildField.NOT_HOT_DAY)) {
            all.add(new Learned.NotHot(
                    car.value(BuildField.NOT_HOT_DAY),
                    car.has(BuildField.NOT_HOT_SUMMERS) ? car.value(BuildField.NOT_HOT_SUMMERS) : 1));
        }
        return all;
    }

    /**
     * @param car the car
     * @param samples number of samples wanted
     * @param seed seed of the samples
     * @return sampled cars that agree with what is known of it
     */
    static Sampling sampling(Resolved car, int samples, long seed) {
        if (!isKnown(car)) {
            return new Sampling(car, samples, seed);
        }
        Censored evidence = new Censored(car);
        Sampling kept = null;
        int tried = 0;
        for (int round = 0; round < ROUNDS && (kept == null || 2 * kept.size() < samples); round++) {
            Sampling more = new Sampling(car, 2 * samples, seed + 1000L * round)
                    .knowing(evidence::weight, samples, ~seed - 1000L * round);
            kept = kept == null ? more : kept.and(more);
            tried += 2 * samples;
        }
        return kept.size() < LEAST_SHARE * tried ? new Sampling(car, samples, seed) : kept;
    }

    private double weight(Sampling.SampledCar sampled) {
        double weight = 1;
        for (Learned.NotHot known : notHot(car)) {
            if (margins(sampled, r -> r.with(BuildField.AMBIENT, known.upToK()))[COOLANT] < -NOTICED_K) {
                weight *= FastMath.pow(NOT_MET_IN_A_SUMMER, known.summers());
            }
        }
        if (car.is(BuildField.AS_BUILT, YesNo.YES)) {
            double[] asNew = margins(sampled, r -> r.with(BuildField.AMBIENT, MAKERS_DAY_K)
                    .with(BuildField.CORE_BLOCKED, 0)
                    .with(BuildField.CORE_FOULING, 0)
                    .with(BuildField.OIL_LIMIT, OilBalance.CAUTION_K));
            if (asNew[COOLANT] < 0 || asNew[OIL] < 0) {
                weight *= MADE_SO_ALL_THE_SAME;
            }
        }
        return weight;
    }

    private double[] margins(Sampling.SampledCar sampled, UnaryOperator<Resolved> change) {
        try {
            return DutyRater.margins(sampled.changed(change, spread), DUTY);
        } catch (OutOfRangeException outside) {
            return DutyRater.FAILED;
        }
    }
}

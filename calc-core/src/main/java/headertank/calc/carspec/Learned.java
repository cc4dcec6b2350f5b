package headertank.calc.carspec;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What evidence has taught of one car: for every value with a spread and every model factor how far it moved and what is left of its
 * spread, all together, in standard deviations of what was known before. It is a normal distribution: mean and covariance.
 *
 * <p>Each factor belongs to a part. {@link #after} gives back what was known before of the parts that have changed since; the others
 * keep what they have learned, without what they had learned about the changed ones (the marginal distribution).
 *
 * @param from the build that it was learned with; nothing when nothing is learned
 * @param factors the factors, in their order
 * @param covariance lower triangle of their covariance, row by row, in standard deviations of the prior [-]
 * @param notHot on what days the car did not run hot, which no normal distribution says; rating weighs its samples with it
 * @param unexplainedK how far the car so known stays off the coolant of its logs, root mean square, of the log that it is furthest off; 0
 *     without a log [K]
 * @param known how well the car is known by it
 */
public record Learned(
        Optional<Build> from,
        List<Factor> factors,
        List<Double> covariance,
        List<NotHot> notHot,
        double unexplainedK,
        HowKnown known) {

    /** Nothing is learned: a car is what its fields and its class say. */
    public static final Learned NOTHING =
            new Learned(Optional.empty(), List.of(), List.of(), List.of(), 0, HowKnown.FROM_THE_SHEET);

    /** A factor that moves further than this is no longer believed without a person's look; modelling choice [-]. */
    public static final double CREDIBLE = 2.5;

    /**
     * A log that a car stays further off than this, root mean square, is none of a car that is what it is said to be: {@link #CREDIBLE}
     * standard deviations above what a right car's leaves (1 K, give or take a factor of two) [K]; modelling choice.
     */
    public static final double CREDIBLE_UNEXPLAINED_K = 6;

    /**
     * One factor.
     *
     * @param key of the {@link BuildField} or {@link ModelFactor}
     * @param part the part that it belongs to
     * @param prior what was expected of a field [SI]; 0 for a model factor
     * @param sigma one standard deviation of that: a share for a relative one, else in its own unit
     * @param relative whether it is a share
     * @param moved how far it moved, in these standard deviations [-]
     * @param left what is left of the standard deviation, as a share of it [-]
     */
    public record Factor(
            String key, FieldGroup part, double prior, double sigma, boolean relative, double moved, double left) {

        /** @return whether it wanted to move further than anybody would believe: another car was logged, or it has a fault */
        public boolean isBeyondBelief() {
            return Math.abs(moved) > CREDIBLE;
        }
    }

    /**
     * The car did not run hot.
     *
     * @param upToK hottest day on which it did not [K]
     * @param summers for how many summers
     */
    public record NotHot(double upToK, double summers) {}

    public Learned {
        factors = List.copyOf(factors);
        covariance = List.copyOf(covariance);
        notHot = List.copyOf(notHot);
        int n = factors.size();
        if (covariance.size() != n * (n + 1) / 2) {
            throw new IllegalArgumentException(
                    n + " factors need " + n * (n + 1) / 2 + " covariances, there are " + covariance.size());
        }
    }

    /** @return the same, confirmed: a run that it was not learned from came out as it says; what is learned of no run stays as it is */
    public Learned confirmed() {
        return new Learned(
                from,
                factors,
                covariance,
                notHot,
                unexplainedK,
                known == HowKnown.FROM_A_RUN ? HowKnown.CONFIRMED_BY_ANOTHER_RUN : known);
    }

    /** @return whether nothing is learned */
    public boolean isNothing() {
        return factors.isEmpty() && notHot.isEmpty();
    }

    /** @return the factor of this key, if something is learned of it */
    public Optional<Factor> factor(String key) {
        return factors.stream().filter(f -> f.key().equals(key)).findFirst();
    }

    /** @return factors that the evidence would have to move further than is believable, the furthest first */
    public List<Factor> beyondBelief() {
        return factors.stream()
                .filter(Factor::isBeyondBelief)
                .sorted((a, b) -> Double.compare(Math.abs(b.moved()), Math.abs(a.moved())))
                .toList();
    }

    /**
     * How far all factors moved together, over how far so much evidence moves those of a car that is what it is said to be: the length
     * of the move over the root of the number of directions that the evidence pins, n less the trace of the covariance, at least one.
     * A single reading that is far off spreads over many factors, none of which moves far.
     *
     * @return about 1 for a car that is what it is said to be [-]
     */
    public double strain() {
        double squares = 0;
        double pinned = 0;
        for (Factor f : factors) {
            squares += f.moved() * f.moved();
            pinned += 1 - f.left() * f.left();
        }
        return Math.sqrt(squares / Math.max(1, pinned));
    }

    /**
     * @return whether the evidence would move one factor, or all of them together, further than is believable, or leaves more of a log
     *     unexplained
     */
    public boolean isBeyondBelief() {
        return strain() > CREDIBLE
                || unexplainedK > CREDIBLE_UNEXPLAINED_K
                || !beyondBelief().isEmpty();
    }

    /** @return covariance of two factors by their places [-] */
    public double covariance(int i, int j) {
        int row = Math.max(i, j);
        return covariance.get(row * (row + 1) / 2 + Math.min(i, j));
    }

    /** @return by how much each {@link ModelFactor} moved: the logarithm of a factor, an offset as it is */
    public double[] deviations() {
        double[] moved = new double[ModelFactor.values().length];
        for (Factor f : factors) {
            ModelFactor.ofKey(f.key()).ifPresent(m -> moved[m.ordinal()] = f.sigma() * f.moved());
        }
        return moved;
    }

    /**
     * @param now the car as it is now
     * @return what is still known of it: nothing of the parts of which a field has changed
     */
    public Learned after(Build now) {
        if (from.isEmpty() || from.get().equals(now)) {
            return this;
        }
        Set<FieldGroup> changed = EnumSet.noneOf(FieldGroup.class);
        for (BuildField f : BuildField.values()) {
            if (!now.entry(f).equals(from.get().entry(f))) {
                changed.add(f.group());
            }
        }
        // How hard a driver drives does not change with the day to design for.
        changed.remove(FieldGroup.USE);
        return keeping(f -> !changed.contains(f.part()));
    }

    /** @return the same of these factors only: the marginal distribution */
    Learned keeping(Predicate<Factor> kept) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < factors.size(); i++) {
            if (kept.test(factors.get(i))) {
                places.add(i);
            }
        }
        if (places.size() == factors.size()) {
            return this;
        }
        List<Double> triangle = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            for (int j = 0; j <= i; j++) {
                triangle.add(covariance(places.get(i), places.get(j)));
            }
        }
        return new Learned(
                from,
                places.stream().map(factors::get).toList(),
                triangle,
                notHot,
                unexplainedK,
                places.isEmpty() && notHot.isEmpty() ? HowKnown.FROM_THE_SHEET : known);
    }
}

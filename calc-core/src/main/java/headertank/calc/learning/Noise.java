package headertank.calc.learning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;

/**
 * What may be left of what was seen, of all evidence together: numbers that are independent already, and readings of logs, of which the size of what is
 * left is not known beforehand. How large it is, each log says itself: the size with the highest marginal likelihood, the unknowns of the
 * car integrated out by Laplace's approximation, weighed with a prior (the empirical Bayes of C. M. Bishop, Pattern Recognition and Machine
 * Learning, 2006, section 3.5, from memory). So a log that the model follows closely is a sharp proof, and one that it can not
 * follow, a blunt one.
 */
final class Noise {

    /** What is left of a right car's log unless the log says otherwise; modelling choice. */
    static final Leftover.Size USUAL = new Leftover.Size(1.0, 0.4);

    /** How far that may be off, one standard deviation of the logarithm: a factor of two, of the part that passes 1.5; modelling choices. */
    private static final double LASTING_SIGMA = 0.7;

    private static final double PASSING_SIGMA = 0.4;

    /** Step of the search, as a factor. */
    private static final double STEP = FastMath.sqrt(FastMath.sqrt(2));

    private static final int MOST_STEPS = 6;

    /** Readings of a log among all that was seen. */
    private record Stretch(int from, Leftover leftover) {}

    private final List<Stretch> stretches;

    private Noise(List<Stretch> stretches) {
        this.stretches = stretches;
    }

    /** @return noise of what is independent and of unit variance already */
    static Noise independent() {
        return new Noise(List.of());
    }

    /** @return the same, and readings of a log from this place on */
    Noise with(int from, Leftover leftover) {
        List<Stretch> more = new ArrayList<>(stretches);
        more.add(new Stretch(from, leftover));
        return new Noise(List.copyOf(more));
    }

    /**
     * @param left what is left of all that was seen
     * @return its root mean square over the log of which most is left; 0 without a log [K]
     */
    double furthestOffK(double[] left) {
        return stretches.stream()
                .mapToDouble(s -> Arrays.stream(
                                left, s.from(), s.from() + s.leftover().readings())
                        .map(v -> v * v)
                        .average()
                        .orElse(0))
                .map(FastMath::sqrt)
                .max()
                .orElse(0);
    }

    /** @return these numbers made independent, each of unit variance */
    double[] independent(double[] seen) {
        double[] free = seen.clone();
        stretches.forEach(s -> s.leftover().makeIndependent(free, s.from()));
        return free;
    }

    /** @return these columns, made independent */
    double[][] independent(double[][] columns) {
        double[][] free = new double[columns.length][];
        for (int i = 0; i < columns.length; i++) {
            free[i] = independent(columns[i]);
        }
        return free;
    }

    /**
     * @param left what is left of what was seen
     * @param slopes its slopes against each unknown
     * @return noise of the sizes that these speak for, a few steps from the present ones at most
     */
    Noise estimated(double[] left, double[][] slopes) {
        Noise now = this;
        for (int i = 0; i < stretches.size(); i++) {
            Stretch s = now.stretches.get(i);
            RealMatrix others = now.normalWithout(s, slopes);
            Leftover best = s.leftover();
            double least = cost(s, best, others, left, slopes);
            for (int step = 0; step < MOST_STEPS; step++) {
                Leftover.Size size = best.size();
                Leftover next = best;
                for (double[] factor : new double[][] {{STEP, 1}, {1 / STEP, 1}, {1, STEP}, {1, 1 / STEP}}) {
                    Leftover tried =
                            best.of(new Leftover.Size(factor[0] * size.lastingK(), factor[1] * size.passingK()));
                    double cost = cost(s, tried, others, left, slopes);
                    if (cost < least) {
                        least = cost;
                        next = tried;
                    }
                }
                if (next == best) {
                    break;
                }
                best = next;
            }
            List<Stretch> changed = new ArrayList<>(now.stretches);
            changed.set(i, new Stretch(s.from(), best));
            now = new Noise(List.copyOf(changed));
        }
        return now;
    }

    /** @return the normal equations with the prior, of all but one log */
    private RealMatrix normalWithout(Stretch without, double[][] slopes) {
        double[][] columns = independent(slopes);
        for (double[] column : columns) {
            Arrays.fill(
                    column, without.from(), without.from() + without.leftover().readings(), 0);
        }
        RealMatrix transposed = MatrixUtils.createRealMatrix(columns);
        return transposed.multiplyTransposed(transposed).add(MatrixUtils.createRealIdentityMatrix(slopes.length));
    }

    /** Less twice the logarithm of the marginal likelihood and of the prior, as far as the size of one log's errors changes it. */
    private static double cost(Stretch s, Leftover leftover, RealMatrix others, double[] left, double[][] slopes) {
        int to = s.from() + leftover.readings();
        double[] readings = Arrays.copyOfRange(left, s.from(), to);
        leftover.makeIndependent(readings, 0);
        double cost = leftover.logDeterminant();
        for (double v : readings) {
            cost += v * v;
        }
        double[][] columns = new double[slopes.length][];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = Arrays.copyOfRange(slopes[i], s.from(), to);
            leftover.makeIndependent(columns[i], 0);
        }
        RealMatrix transposed = MatrixUtils.createRealMatrix(columns);
        RealMatrix root =
                new CholeskyDecomposition(others.add(transposed.multiplyTransposed(transposed)), 1e-9, 1e-12).getL();
        for (int i = 0; i < slopes.length; i++) {
            cost += 2 * FastMath.log(root.getEntry(i, i));
        }
        return cost + prior(leftover.size());
    }

    private static double prior(Leftover.Size size) {
        double lasting = FastMath.log(size.lastingK() / USUAL.lastingK()) / LASTING_SIGMA;
        double passing = FastMath.log(size.passingK() / USUAL.passingK()) / PASSING_SIGMA;
        return lasting * lasting + passing * passing;
    }
}

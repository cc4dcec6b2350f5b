package headertank.calc.learning;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.FastMath;

/**
 * The normal distribution that fits what is left of independent standard normal unknowns after residuals were seen: Gauss-Newton steps
 * to the least of |r(x)|^2 + |x|^2, and there the inverse of J'J + I. For a linear r it is the exact posterior. Columns of the Jacobian
 * are differences over {@link #STEP}, wide enough to step over the edges of a fan control; they run on all cores, each in its
 * place, so that the digits are the same on any number of them. How large the noise is, is estimated anew in each turn ({@link Noise}): as
 * long as little is explained it is large, and the search goes over what would stop it later.
 *
 * @see "A. Tarantola, Inverse Problem Theory, 2005, chapter 3 (from memory)"
 */
final class Posterior {

    /** Width of a difference, in standard deviations of the prior; modelling choice. */
    private static final double STEP = 0.1;

    private static final int MOST_TURNS = 30;

    /** Shares of the diagonal that are added in each turn, of which the best is taken [-]. */
    private static final double[] DAMPING = {0, 0.1, 0.5, 2.5, 12, 100};

    /** No unknown moves further than this in one turn, in standard deviations of the prior: a straight line is no longer believed. */
    private static final double LONGEST = 1;

    /** An unknown whose column has a smaller sum of squares keeps its prior within this share of its variance [-]. */
    private static final double FAINT = 1e-2;

    /** What a column that is not looked at again may at most move its unknown [standard deviations]. */
    private static final double FAINT_PULL = 0.05;

    /** A turn that gains less of the sum of squares and a twentieth is a bottom [-]. */
    private static final double GAIN = 1e-3;

    private static final double LEAST_GAIN = 0.05;

    private final double[] mean;
    private final RealMatrix covariance;
    private final double unexplainedK;

    private Posterior(double[] mean, RealMatrix covariance, double unexplainedK) {
        this.mean = mean;
        this.covariance = covariance;
        this.unexplainedK = unexplainedK;
    }

    /**
     * @param unknowns number of unknowns, each standard normal before
     * @param residuals what was seen less what these unknowns give; null where no model answers; callable from several threads at once
     * @param usual what may be left of it unless it says otherwise itself
     * @return what is known of the unknowns
     * @throws IllegalArgumentException when no model answers at the prior's mean
     */
    static Posterior of(int unknowns, UnaryOperator<double[]> residuals, Noise usual) {
        double[] x = new double[unknowns];
        double[] r = residuals.apply(x);
        if (r == null) {
            throw new IllegalArgumentException("the car as it is expected has no answer to this evidence");
        }
        Noise noise = usual;
        double[][] slopes = null;
        double side = STEP;
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            slopes = slopes(x, r, residuals, side, slopes, noise);
            noise = noise.estimated(r, slopes);
            RealMatrix free = MatrixUtils.createRealMatrix(noise.independent(slopes));
            RealMatrix normal = normal(free);
            RealVector down = free.operate(MatrixUtils.createRealVector(noise.independent(r)))
                    .add(MatrixUtils.createRealVector(x))
                    .mapMultiply(-1);
            double before = squares(noise.independent(r)) + squares(x);
            Step best = best(x, normal, down, residuals, noise);
            boolean gains = best != null && best.squares() < before;
            if (gains) {
                x = best.x();
                r = best.r();
            }
            if (!gains || before - best.squares() < LEAST_GAIN + GAIN * before) {
                if (side < 0) {
                    break;
                }
                // What looks like a bottom may be a kink: the slopes of the other side tell.
                side = -side;
            } else {
                side = STEP;
            }
        }
        RealMatrix covariance = solver(normal(MatrixUtils.createRealMatrix(noise.independent(slopes))))
                .getSolver()
                .getInverse();
        return new Posterior(x, covariance, noise.furthestOffK(r));
    }

    /** @param columns a row for each unknown */
    private static RealMatrix normal(RealMatrix columns) {
        return columns.multiplyTransposed(columns).add(MatrixUtils.createRealIdentityMatrix(columns.getRowDimension()));
    }

    /**
     * Where a turn would go.
     *
     * @param r what would be left of what was seen
     * @param squares sum of squares of that and of the unknowns
     */
    private record Step(double[] x, double[] r, double squares) {}

    /** @return the lowest of the places to which steps of several lengths lead; null where no model answers at any */
    private static Step best(
            double[] x, RealMatrix normal, RealVector down, UnaryOperator<double[]> residuals, Noise noise) {
        List<Step> steps = DoubleStream.of(DAMPING)
                .parallel()
                .mapToObj(d -> {
                    double[] to = moved(x, solver(damped(normal, d)).getSolver().solve(down));
                    double[] r = residuals.apply(to);
                    return r == null ? null : new Step(to, r, squares(noise.independent(r)) + squares(to));
                })
                .filter(step -> step != null)
                .toList();
        return steps.stream().min(Comparator.comparingDouble(Step::squares)).orElse(null);
    }

    private static CholeskyDecomposition solver(RealMatrix normal) {
        try {
            return new CholeskyDecomposition(normal, 1e-9, 1e-12);
        } catch (MathRuntimeException notPositive) {
            throw new IllegalStateException("the normal equations have no root", notPositive);
        }
    }

    /** @param before the slopes of the turn before, of which those that say next to nothing are kept; null for none */
    private static double[][] slopes(
            double[] x, double[] r, UnaryOperator<double[]> residuals, double side, double[][] before, Noise noise) {
        double[] free = noise.independent(r);
        return IntStream.range(0, x.length)
                .parallel()
                .mapToObj(i -> before != null && isFaint(noise.independent(before[i]), free)
                        ? before[i]
                        : column(x, r, i, residuals, side))
                .toArray(double[][]::new);
    }

    /** A column that would neither narrow its unknown nor, by what is left now, move it. */
    private static boolean isFaint(double[] column, double[] r) {
        double pull = 0;
        for (int k = 0; k < r.length; k++) {
            pull += column[k] * r[k];
        }
        return squares(column) < FAINT && Math.abs(pull) < FAINT_PULL;
    }

    /** One column; away from a side on which no model answers, zero where neither does. */
    private static double[] column(double[] x, double[] r, int i, UnaryOperator<double[]> residuals, double side) {
        for (double h : new double[] {side, -side}) {
            double[] aside = x.clone();
            aside[i] += h;
            double[] found = residuals.apply(aside);
            if (found != null) {
                double[] slope = new double[r.length];
                for (int k = 0; k < r.length; k++) {
                    slope[k] = (found[k] - r[k]) / h;
                }
                return slope;
            }
        }
        return new double[r.length];
    }

    /** The normal equations with a share of their diagonal added (D. W. Marquardt, 1963, from memory), which shortens a step. */
    private static RealMatrix damped(RealMatrix normal, double damping) {
        RealMatrix sum = normal.copy();
        for (int i = 0; i < sum.getRowDimension(); i++) {
            sum.multiplyEntry(i, i, 1 + damping);
        }
        return sum;
    }

    private static double[] moved(double[] x, RealVector step) {
        double share = Math.min(1, LONGEST / step.getLInfNorm());
        double[] to = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            to[i] = x[i] + share * step.getEntry(i);
        }
        return to;
    }

    private static double squares(double[] v) {
        return Arrays.stream(v).map(a -> a * a).sum();
    }

    /** @return where each unknown is expected [standard deviations of the prior] */
    double mean(int i) {
        return mean[i];
    }

    /** @return what is left of its standard deviation [-] */
    double left(int i) {
        return FastMath.sqrt(covariance.getEntry(i, i));
    }

    double covariance(int i, int j) {
        return covariance.getEntry(i, j);
    }

    /** @return root mean square of what is left of the log that leaves most; 0 without a log [K] */
    double unexplainedK() {
        return unexplainedK;
    }
}

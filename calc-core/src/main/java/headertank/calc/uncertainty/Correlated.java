package headertank.calc.uncertainty;

import headertank.calc.carspec.Learned;
import headertank.calc.carspec.Resolved;
import java.util.Optional;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Makes of independent deviates those of a car of which something was learned: what is learned hangs together, so that two factors
 * that explain the same reading are never both far off. By the root of Cholesky of the covariance; an unknown that nothing was learned
 * of keeps its deviate.
 */
final class Correlated {

    private final int[] places;
    private final double[][] root;
    private final double[] scale;

    private Correlated(int[] places, double[][] root, double[] scale) {
        this.places = places;
        this.root = root;
        this.scale = scale;
    }

    /** @return what was learned of the car, if anything was */
    static Optional<Correlated> of(Resolved car, Unknowns unknowns) {
        Learned learned = car.learned();
        int n = learned.factors().size();
        if (n == 0) {
            return Optional.empty();
        }
        int[] places = new int[n];
        double[] scale = new double[n];
        RealMatrix covariance = MatrixUtils.createRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            Learned.Factor f = learned.factors().get(i);
            places[i] = unknowns.place(f.key());
            // The spread of a value is already what is left of it; a model factor is asked for in whole standard
            // deviations.
            scale[i] = unknowns.isField(places[i]) ? 1 / f.left() : 1;
            for (int j = 0; j < n; j++) {
                covariance.setEntry(i, j, learned.covariance(i, j));
            }
        }
        double[][] root =
                new CholeskyDecomposition(covariance, 1e-9, 1e-12).getL().getData();
        return Optional.of(new Correlated(places, root, scale));
    }

    /** Mixes independent deviates in place. */
    void apply(double[] z) {
        double[] mixed = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            for (int j = 0; j <= i; j++) {
                mixed[i] += root[i][j] * z[places[j]];
            }
        }
        for (int i = 0; i < places.length; i++) {
            z[places[i]] = scale[i] * mixed[i];
        }
    }
}

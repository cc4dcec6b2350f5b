package headertank.calc.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

class PosteriorTest {

    /** Textbook: covariance (I + A'A)^-1, mean that times A'b, for residuals b - A x of unit noise. */
    @Test
    void aLinearCarGivesTheTextbookPosterior() {
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 1; n <= 12; n++) {
            int seen = 2 * n + 1;
            RealMatrix a = MatrixUtils.createRealMatrix(seen, n);
            for (int i = 0; i < seen; i++) {
                for (int j = 0; j < n; j++) {
                    a.setEntry(i, j, 4 * random.nextDouble() - 2);
                }
            }
            RealVector b =
                    MatrixUtils.createRealVector(random.doubles(seen, -5, 5).toArray());
            Posterior found = Posterior.of(
                    n,
                    x -> b.subtract(a.operate(MatrixUtils.createRealVector(x))).toArray(),
                    Noise.independent());

            RealMatrix normal = a.transposeMultiply(a).add(MatrixUtils.createRealIdentityMatrix(n));
            RealMatrix covariance = new LUDecomposition(normal).getSolver().getInverse();
            RealVector mean = covariance.operate(a.transpose().operate(b));
            for (int i = 0; i < n; i++) {
                assertThat(found.mean(i)).isCloseTo(mean.getEntry(i), within(1e-6));
                assertThat(found.left(i)).isCloseTo(Math.sqrt(covariance.getEntry(i, i)), within(1e-6));
                for (int j = 0; j < n; j++) {
                    assertThat(found.covariance(i, j)).isCloseTo(covariance.getEntry(i, j), within(1e-6));
                }
            }
        }
    }

    @Test
    void followsACurveToItsBottom() {
        Posterior found =
                Posterior.of(1, x -> new double[] {20 * (Math.exp(0.5 * x[0]) - Math.exp(0.8))}, Noise.independent());
        assertThat(found.mean(0)).isCloseTo(1.6, within(0.01));
        assertThat(found.left(0)).isLessThan(0.06);
    }

    @Test
    void goesRoundWhereNoModelAnswers() {
        Posterior found = Posterior.of(1, x -> x[0] > 1.05 ? null : new double[] {5 * (x[0] - 1)}, Noise.independent());
        assertThat(found.mean(0)).isCloseTo(25.0 / 26, within(1e-6));
        assertThatThrownBy(() -> Posterior.of(1, x -> null, Noise.independent()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

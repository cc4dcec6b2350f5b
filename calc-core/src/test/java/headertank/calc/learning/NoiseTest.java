package headertank.calc.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

class NoiseTest {

    private static final double LASTS_S = 150;

    /** Covariance of an Ornstein-Uhlenbeck process and of white noise, element by element. */
    private static RealMatrix covariance(Leftover.Size size, double[] timeS) {
        RealMatrix c = MatrixUtils.createRealMatrix(timeS.length, timeS.length);
        for (int i = 0; i < timeS.length; i++) {
            for (int j = 0; j < timeS.length; j++) {
                double lasting = size.lastingK() * size.lastingK() * Math.exp(-Math.abs(timeS[i] - timeS[j]) / LASTS_S);
                c.setEntry(i, j, lasting + (i == j ? size.passingK() * size.passingK() : 0));
            }
        }
        return c;
    }

    private static double[] times(int n, SplittableRandom random) {
        double[] t = new double[n];
        for (int i = 1; i < n; i++) {
            t[i] = t[i - 1] + 10 * (1 + random.nextInt(4));
        }
        return t;
    }

    private static double[] drawn(Leftover.Size size, double[] timeS, SplittableRandom random) {
        double[] z = new double[timeS.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = random.nextGaussian();
        }
        return new CholeskyDecomposition(covariance(size, timeS)).getL().operate(z);
    }

    /** Textbook: the inverse of Cholesky's root, and the determinant, of the whole covariance. */
    @Test
    void readingsAreMadeIndependentAsByCholesky() {
        SplittableRandom random = new SplittableRandom(5);
        double[] timeS = times(40, random);
        Leftover.Size size = new Leftover.Size(0.7, 0.25);
        double[] left = random.doubles(timeS.length, -3, 3).toArray();
        RealMatrix covariance = covariance(size, timeS);
        RealVector expected = new LUDecomposition(new CholeskyDecomposition(covariance).getL())
                .getSolver()
                .solve(MatrixUtils.createRealVector(left));
        Leftover leftover = new Leftover(size, timeS);
        double[] found = Noise.independent().with(0, leftover).independent(left);
        for (int i = 0; i < found.length; i++) {
            assertThat(found[i]).isCloseTo(expected.getEntry(i), within(1e-9));
        }
        assertThat(leftover.logDeterminant())
                .isCloseTo(Math.log(new CholeskyDecomposition(covariance).getDeterminant()), within(1e-9));
    }

    /** A linear car with noise of a known size, which is not told: the log says it, and so how sharp a proof it is. */
    @Test
    void aLogSaysHowFarItsModelIsOff() {
        double sharp = leftBy(new Leftover.Size(0.35, 0.2));
        double blunt = leftBy(new Leftover.Size(2.8, 0.2));
        assertThat(blunt).isBetween(2.5 * sharp, 20 * sharp);
    }

    /** @return what is left of the first unknown after a log with such noise [standard deviations of the prior] */
    private static double leftBy(Leftover.Size truth) {
        SplittableRandom random = new SplittableRandom(12);
        double[] timeS = times(150, random);
        double[] noise = drawn(truth, timeS, random);
        Posterior found = Posterior.of(
                3,
                x -> {
                    double[] r = new double[timeS.length];
                    for (int i = 0; i < r.length; i++) {
                        double u = i / 150.0;
                        r[i] = noise[i] + 5 * (0.5 - x[0]) + 4 * u * (-1 - x[1]) + 4 * u * u * (0.8 - x[2]);
                    }
                    return r;
                },
                Noise.independent().with(0, new Leftover(Noise.USUAL, timeS)));
        assertThat(Math.abs(found.mean(0) - 0.5)).isLessThan(3.5 * found.left(0));
        return found.left(0);
    }
}

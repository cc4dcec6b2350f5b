package headertank.calc.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.result.Distribution;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class LatinHypercubeTest {

    @Test
    void everyStratumIsHitOnce() {
        int n = 64;
        double[][] z = LatinHypercube.standardNormal(n, 7, 8, 9, 10, 11);
        double low = cdf(-LatinHypercube.CUT);
        double high = cdf(LatinHypercube.CUT);
        for (int d = 0; d < 5; d++) {
            boolean[] hit = new boolean[n];
            for (double[] sample : z) {
                int stratum = (int) Math.min(n - 1, Math.floor(n * (cdf(sample[d]) - low) / (high - low)));
                assertThat(hit[stratum])
                        .as("dimension %d stratum %d twice", d, stratum)
                        .isFalse();
                hit[stratum] = true;
            }
        }
    }

    @Test
    void theSameSeedGivesTheSameSampleAndAnotherSeedAnother() {
        assertThat(LatinHypercube.standardNormal(16, 1, 2)).isDeepEqualTo(LatinHypercube.standardNormal(16, 1, 2));
        assertThat(LatinHypercube.standardNormal(16, 1, 2)[0]).isNotEqualTo(LatinHypercube.standardNormal(16, 1, 3)[0]);
        assertThat(LatinHypercube.standardNormal(16, 5, 1)[3][1]).isEqualTo(LatinHypercube.standardNormal(16, 1)[3][0]);
    }

    /** Variance of a standard normal cut at 3 sigma: 1 - 6 phi(3)/(2 Phi(3) - 1) = 0.97334. */
    @Test
    void momentsAreThoseOfTheCutNormalDistribution() {
        double sum = 0;
        double squares = 0;
        int n = 1000;
        for (double[] s : LatinHypercube.standardNormal(n, 3)) {
            sum += s[0];
            squares += s[0] * s[0];
        }
        assertThat(sum / n).isCloseTo(0, within(0.005));
        assertThat(squares / n).isCloseTo(0.97334, within(0.005));
    }

    @Test
    void distributionReadsPercentilesAndCountsWhatFailed() {
        double[] outcomes = new double[101];
        for (int i = 0; i < outcomes.length; i++) {
            outcomes[i] = i - 50;
        }
        outcomes[0] = Double.NEGATIVE_INFINITY;
        Distribution d = Distribution.of(outcomes);
        assertThat(d.low()).isEqualTo(-45);
        assertThat(d.median()).isEqualTo(0);
        assertThat(d.high()).isEqualTo(45);
        assertThat(Distribution.shareBelow(outcomes, 0)).isCloseTo(50.0 / 101, within(1e-12));
        assertThat(Distribution.standardError(0.5, 100)).isBetween(0.049, 0.05);
        assertThat(Distribution.standardError(0, 256)).isBetween(0.003, 0.005);
        assertThatThrownBy(() -> Distribution.of(new double[] {Double.NaN}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double cdf(double z) {
        return 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }
}

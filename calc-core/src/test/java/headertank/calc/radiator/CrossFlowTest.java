package headertank.calc.radiator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.fluid.Figures;
import java.util.Random;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

class CrossFlowTest {

    @Test
    void wholeTable() {
        int compared = 0;
        for (Figures.Row r : Figures.read(getClass(), "effectiveness.csv")) {
            assertThat(EffectivenessPublishedTest.ours(r))
                    .as(r.toString())
                    .isCloseTo(r.number("effectiveness"), within(1e-8));
            compared++;
        }
        assertThat(compared).isEqualTo(200);
    }

    /** Independent prototype of the same equations. */
    @Test
    void prototypeValues() {
        assertThat(CrossFlow.effectiveness(1, 0.5)).isCloseTo(0.547490, within(1e-6));
        assertThat(CrossFlow.effectiveness(2, 0.3)).isCloseTo(0.784184, within(1e-6));
        assertThat(CrossFlow.effectiveness(3, 1)).isCloseTo(0.681291, within(1e-6));
    }

    /** The plain twin: march cell by cell, both streams unmixed. */
    @Test
    void equalsACellByCellMarch() {
        for (double[] point : new double[][] {{0.5, 0.2}, {1, 0.5}, {2, 0.3}, {3, 1}}) {
            assertThat(CrossFlow.effectiveness(point[0], point[1]))
                    .isCloseTo(march(point[0], point[1], 400), within(1e-5));
        }
    }

    private static double march(double ntu, double c, int n) {
        double[] second = new double[n];
        double out = 0;
        for (int i = 0; i < n; i++) {
            double first = 1;
            for (int j = 0; j < n; j++) {
                // Mean difference in the cell by the trapezium of both streams, solved for the exchange.
                double ex = ntu / n * (first - second[j]) / (1 + 0.5 * ntu / n * (1 + c));
                first -= ex;
                second[j] += c * ex;
            }
            out += first / n;
        }
        return 1 - out;
    }

    @Test
    void limitsAndOrderOfArrangements() {
        long seed = 11L;
        Random random = new Random(seed);
        for (int i = 0; i < 3000; i++) {
            double ntu = FastMath.exp(-6 + 9 * random.nextDouble());
            double c = random.nextDouble();
            String as = "seed " + seed + ", NTU " + ntu + ", C " + c;
            double cross = CrossFlow.effectiveness(ntu, c);
            assertThat(cross).as(as).isStrictlyBetween(0.0, 1.0 + 1e-15);
            assertThat(CrossFlow.effectiveness(ntu * 1.01, c)).as(as).isGreaterThanOrEqualTo(cross);
            assertThat(CrossFlow.effectiveness(ntu, Math.min(1, c * 1.01)))
                    .as(as)
                    .isLessThanOrEqualTo(cross);
            double counter = counterflow(ntu, c);
            double slack = 1e-9;
            assertThat(counter).as(as).isGreaterThanOrEqualTo(cross - slack);
            assertThat(cross).as(as).isGreaterThanOrEqualTo(largerMixed(ntu, c) - slack);
            assertThat(cross).as(as).isGreaterThanOrEqualTo(smallerMixed(ntu, c) - slack);
        }
    }

    /** Bounds from above and below; Kays and London, from memory. */
    private static double counterflow(double ntu, double c) {
        double gain = 1 - FastMath.exp(-ntu * (1 - c));
        return gain / (1 - c + c * gain);
    }

    private static double largerMixed(double ntu, double c) {
        return (1 - FastMath.exp(-c * (1 - FastMath.exp(-ntu)))) / c;
    }

    private static double smallerMixed(double ntu, double c) {
        return 1 - FastMath.exp(-(1 - FastMath.exp(-c * ntu)) / c);
    }

    @Test
    void oneStreamOfEndlessCapacity() {
        for (double ntu : new double[] {1e-6, 0.3, 1, 5, 40}) {
            double limit = 1 - FastMath.exp(-ntu);
            assertThat(CrossFlow.effectiveness(ntu, 0)).isCloseTo(limit, within(1e-12));
            assertThat(CrossFlow.effectiveness(ntu, 1e-9)).isCloseTo(limit, within(1e-7));
        }
        assertThat(CrossFlow.effectiveness(0, 0.5)).isZero();
        assertThat(CrossFlow.effectiveness(1e9, 0.5)).isCloseTo(1, within(1e-9));
    }

    @Test
    void passesSideBySide() {
        for (double ua : new double[] {200, 1500, 4000}) {
            double one = Passes.heatPerKelvin(1, ua, 1700, 7300);
            double many = 7300 * (1 - FastMath.exp(-1700.0 / 7300 * (1 - FastMath.exp(-ua / 1700))));
            double last = one;
            for (int n = 2; n <= 60; n++) {
                double q = Passes.heatPerKelvin(n, ua, 1700, 7300);
                assertThat(q).isLessThanOrEqualTo(last + 1e-9).isGreaterThanOrEqualTo(many - 1e-9);
                last = q;
            }
            assertThat(Passes.heatPerKelvin(5000, ua, 1700, 7300)).isCloseTo(many, within(1e-4 * many));
            assertThat(one).isEqualTo(1700 * CrossFlow.effectiveness(ua / 1700, 1700.0 / 7300));
        }
    }
}

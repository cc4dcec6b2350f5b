package headertank.calc.learning;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.judged.DutyRater;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointRater;
import headertank.calc.uncertainty.LatinHypercube;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Sampling;
import headertank.calc.uncertainty.Unknowns;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Calibration by simulation (S. Talts et al., Validating Bayesian Inference Algorithms with Simulation-Based Calibration, 2018, from
 * memory): cars drawn from what is not known of one, a log made of each, and the rank of its true margin among the margins of the cars that
 * are left possible. {@code -Dheadertank.calibration.cars=300} takes an hour; three take seconds and can only tell a gross error.
 */
class CalibrationTest {

    private static final int RANKS = 99;
    private static final int BINS = 10;

    /** Chi-square of nine degrees of freedom that one right set in a hundred passes. */
    private static final double ONE_IN_A_HUNDRED = 21.67;

    private static final Rater RATER = Rater.standard();
    private static final Build CAR = Builds.drift();
    private static final List<Duty> DUTIES = List.of(StandardDuties.DRIFT, StandardDuties.TRACK);

    @Test
    void theTruthLiesAmongWhatIsLeft() {
        int cars = Integer.getInteger("headertank.calibration.cars", 3);
        Resolved expected = RATER.resolve(CAR);
        Unknowns unknowns = new Unknowns(expected);
        ModelSpread spread =
                ModelSpread.of(expected, PointRater.rate(Plant.of(expected), StandardDuties.STREET.point("hill")));
        double[][] drawn = LatinHypercube.standardNormal(
                cars,
                LongStream.range(0, unknowns.size()).map(i -> 4001 + 29 * i).toArray());
        int[][] bins = new int[2][BINS];
        int[] inside = new int[2];
        int[] clear = new int[2];
        int[] right = new int[2];
        double[][] widths = new double[2][cars];
        for (int i = 0; i < cars; i++) {
            Resolved values = unknowns.values(drawn[i]);
            Plant driven = unknowns.plant(values.with(BuildField.AMBIENT, SyntheticDrive.AMBIENT_K), drawn[i], spread);
            Plant truth = unknowns.plant(values, drawn[i], spread);
            Learned learned = RATER.learn(CAR, SyntheticDrive.of(driven, 1000 + i));
            Sampling left = new Sampling(RATER.knowing(learned).resolve(CAR), RANKS, 31 + i);
            for (int d = 0; d < 2; d++) {
                Duty duty = DUTIES.get(d);
                double margin = DutyRater.finiteMarginK(truth, duty);
                double[] margins =
                        left.each(c -> DutyRater.finiteMarginK(c.at(spread), duty), Double.NEGATIVE_INFINITY).stream()
                                .mapToDouble(m -> m)
                                .sorted()
                                .toArray();
                int rank = (int) Arrays.stream(margins).filter(m -> m < margin).count();
                bins[d][rank * BINS / (RANKS + 1)]++;
                inside[d] += rank >= 5 && rank < 95 ? 1 : 0;
                widths[d][i] = margins[94] - margins[4];
                if (Math.abs(margin) > 3) {
                    clear[d]++;
                    right[d] += margins[RANKS / 2] > 0 == margin > 0 ? 1 : 0;
                }
            }
        }
        for (int d = 0; d < 2; d++) {
            double square = 0;
            for (int n : bins[d]) {
                square += Math.pow(n - cars / (double) BINS, 2) / (cars / (double) BINS);
            }
            Arrays.sort(widths[d]);
            System.out.println(String.format(
                    Locale.ROOT,
                    "| %s | %.1f | %d of %d | %d of %d | %s | %.1f |",
                    DUTIES.get(d).id(),
                    widths[d][cars / 2],
                    inside[d],
                    cars,
                    right[d],
                    clear[d],
                    Arrays.toString(bins[d]),
                    square));
            assertThat(widths[d][cars / 2]).isLessThan(d == 0 ? 12 : 25);
            if (cars >= 100) {
                assertThat(square).isLessThan(ONE_IN_A_HUNDRED);
                assertThat(inside[d] / (double) cars).isBetween(0.85, 0.95);
                assertThat(right[d] / (double) clear[d]).isGreaterThanOrEqualTo(0.95);
            } else {
                assertThat(inside[d]).isGreaterThanOrEqualTo(cars - 1);
            }
        }
    }
}

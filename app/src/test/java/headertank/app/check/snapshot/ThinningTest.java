package headertank.app.check.snapshot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.result.RunResult.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What may be left out of a trace, and what may not. */
class ThinningTest {

    @Test
    void aStraightLineKeepsItsEnds() {
        assertThat(times(Thinning.forAll(trace(100, t -> 350 + 0.1 * t, t -> 0))))
                .containsExactly(0.0, 100.0);
    }

    @Test
    void aPeakOfOneMomentStays() {
        List<Sample> kept = Thinning.forAll(trace(100, t -> t == 42 ? 360 : 350, t -> 0));
        assertThat(times(kept)).contains(41.0, 42.0, 43.0).hasSizeLessThan(8);
    }

    @Test
    void switchingStaysToTheSecond() {
        List<Sample> kept = Thinning.forAll(trace(300, t -> 350, t -> t >= 120 && t < 200 ? 1 : 0));
        assertThat(times(kept)).contains(119.0, 120.0, 199.0, 200.0).hasSizeLessThan(8);
    }

    @Test
    void nothingIsFurtherOffThanTheTolerance() {
        List<Sample> whole = trace(2000, t -> 360 + 5 * Math.sin(t / 40), t -> 0);
        List<Sample> kept = Thinning.forAll(whole);
        assertThat(kept.size()).isBetween(50, Thinning.MOST);
        for (int i = 1; i < kept.size(); i++) {
            Sample a = kept.get(i - 1);
            Sample b = kept.get(i);
            for (double t = a.timeS(); t <= b.timeS(); t++) {
                double share = (t - a.timeS()) / (b.timeS() - a.timeS());
                double line = a.coolantK() + share * (b.coolantK() - a.coolantK());
                assertThat(whole.get((int) t).coolantK()).isCloseTo(line, within(0.1001));
            }
        }
    }

    @Test
    void aTraceThatNeverRestsIsHeldToTheMost() {
        assertThat(Thinning.forAll(trace(5000, t -> 360 + (t % 2 == 0 ? 0.3 : -0.3), t -> 0)))
                .hasSizeLessThanOrEqualTo(Thinning.MOST);
    }

    private static List<Double> times(List<Sample> kept) {
        return kept.stream().map(Sample::timeS).toList();
    }

    private static List<Sample> trace(int seconds, DoubleUnaryOperator kelvin, DoubleUnaryOperator duty) {
        List<Sample> trace = new ArrayList<>();
        for (int t = 0; t <= seconds; t++) {
            double k = kelvin.applyAsDouble(t);
            trace.add(new Sample(t, "p", k, 350, k, duty.applyAsDouble(t), 0, k + 2, k, 13.5, 0, 1, 350, 320));
        }
        return trace;
    }
}

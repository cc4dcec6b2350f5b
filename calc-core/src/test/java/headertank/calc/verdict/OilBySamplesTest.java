package headertank.calc.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.OilCooling;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Stated;
import headertank.calc.verdict.Finding.Code;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Oil is judged by the same sampled cars and the same probabilities as coolant. */
class OilBySamplesTest {

    private static final Rater RATER = Rater.standard();
    private static final int SAMPLES = 128;

    /** A few degrees below where a shop is careful, nobody knows the oil so well that it is a go; the preview can not tell. */
    @Test
    void oilJustBelowItsLimitIsNoGoOnceItIsSampled() {
        Build near = keeping(3);
        assertThat(RATER.preview(near, List.of(StandardDuties.TRACK)).duty("track"))
                .satisfies(v -> assertThat(oil(v).verdict()).isEqualTo(Verdict.GO));
        DutyVerdict sampled =
                RATER.rate(near, List.of(StandardDuties.TRACK), SAMPLES).duty("track");
        assertThat(oil(sampled).verdict()).isEqualTo(Verdict.GO_WITH_CONDITIONS);
        assertThat(sampled.verdict()).isNotEqualTo(Verdict.GO);
        double passes = sampled.outcome().oilSamples().orElseThrow().probabilityBelow(0);
        assertThat(passes).isBetween(Threshold.GO_PROBABILITY.standard(), 0.6);
    }

    @Test
    void oilFarBelowIsAGoAndFarAboveIsNone() {
        assertThat(oil(RATER.rate(keeping(38), List.of(StandardDuties.TRACK), SAMPLES)
                                .duty("track"))
                        .verdict())
                .isEqualTo(Verdict.GO);
        assertThat(oil(RATER.rate(keeping(-19), List.of(StandardDuties.TRACK), SAMPLES)
                                .duty("track"))
                        .verdict())
                .as("expected below the temperature that damages oil, but in more than 30 % beyond it")
                .isEqualTo(Verdict.NO_GO);
    }

    private static Finding oil(DutyVerdict v) {
        return v.findings().stream()
                .filter(f -> f.code() == Code.OIL_MARGIN)
                .findFirst()
                .orElseThrow();
    }

    /** A car with so much oil margin in its laps [K]. */
    private static Build keeping(double marginK) {
        double now = RATER.preview(car(403.15), List.of(StandardDuties.TRACK))
                .duty("track")
                .outcome()
                .oilMarginK();
        return car(403.15 - now + marginK);
    }

    private static Build car(double limitK) {
        return Build.forCar(CarClass.MODERN_STREET)
                .set(BuildField.ENGINE_POWER, Stated.datasheet(170e3))
                .seen(BuildField.OIL_COOLER, OilCooling.COOLANT)
                .set(BuildField.OIL_LIMIT, Stated.measured(limitK))
                .build();
    }
}

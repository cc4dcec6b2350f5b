package headertank.calc.advice;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Stated;
import headertank.calc.result.WorthMeasuring;
import java.util.List;
import org.junit.jupiter.api.Test;

class NextToMeasureTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void theWorstComesFirstAndWhatIsMeasuredIsNotAskedForAgain() {
        Build build = Builds.drift();
        List<WorthMeasuring> found = RATER.worthMeasuring(build, StandardDuties.DRIFT);
        assertThat(found).isNotEmpty();
        for (int i = 1; i < found.size(); i++) {
            assertThat(found.get(i).marginK())
                    .isLessThanOrEqualTo(found.get(i - 1).marginK());
        }
        WorthMeasuring worst = found.get(0);
        assertThat(worst.marginK()).isGreaterThanOrEqualTo(NextToMeasure.WORTH_K);
        Build measured = build.change()
                .set(worst.field(), Stated.measured(RATER.resolve(build).value(worst.field())))
                .build();
        assertThat(RATER.worthMeasuring(measured, StandardDuties.DRIFT))
                .extracting(WorthMeasuring::field)
                .doesNotContain(worst.field());
    }

    @Test
    void aGuessIsToldFromWhatNobodyStated() {
        Build build = Builds.drift()
                .change()
                .unknown(BuildField.AIR_INLET)
                .set(BuildField.FAN_FLOW, Stated.guessed(0.7))
                .build();
        List<WorthMeasuring> found = RATER.worthMeasuring(build, StandardDuties.DRIFT);
        assertThat(found).filteredOn(w -> w.field() == BuildField.FAN_FLOW).allMatch(WorthMeasuring::guessed);
        assertThat(found).filteredOn(w -> w.field() == BuildField.AIR_INLET).noneMatch(WorthMeasuring::guessed);
    }
}

package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Stated;
import headertank.calc.risk.Flag;
import headertank.calc.verdict.DutyOutcome;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A verdict hangs on the car and not on the dice, and a rule asks about the same car as the verdict. */
class SureSamplesTest {

    private static final Rater RATER = Rater.standard();
    private static final List<Duty> TRACK = List.of(StandardDuties.TRACK);

    @Test
    void whatDoesNotMoveTheMarginDoesNotMoveItsProbability() {
        DutyOutcome as = outcome(RATER.rate(onADayOf(303.15), TRACK, 64));
        for (double coldestK : new double[] {248.15, 255.15, 262.15, 270.15}) {
            Build other = onADayOf(303.15)
                    .change()
                    .set(BuildField.LOWEST_AMBIENT, Stated.measured(coldestK))
                    .build();
            DutyOutcome o = outcome(RATER.rate(other, TRACK, 64));
            assertThat(o.marginSpread()).isEqualTo(as.marginSpread());
            assertThat(o.probabilityTooHot()).isEqualTo(as.probabilityTooHot());
        }
    }

    @Test
    void moreSamplesAreDrawnWhereTheVerdictTurnsAndNowhereElse() {
        boolean more = false;
        boolean enough = false;
        for (double ambientK = 283.15; ambientK <= 313.15; ambientK += 3) {
            DutyOutcome o = outcome(RATER.rate(onADayOf(ambientK), TRACK));
            int n = o.marginSpread().orElseThrow().samples();
            double distance = Math.min(Math.abs(o.probabilityTooHot() - 0.05), Math.abs(o.probabilityTooHot() - 0.30));
            assertThat(n == Rater.MOST_SAMPLES || o.errorTooHot() <= 0.25 * distance)
                    .as("at %s K %s +- %s of %s", ambientK, o.probabilityTooHot(), o.errorTooHot(), n)
                    .isTrue();
            more |= n > Rater.SAMPLES;
            enough |= n == Rater.SAMPLES;
        }
        assertThat(more).isTrue();
        assertThat(enough).isTrue();
    }

    @Test
    void aRaterDrawsAsManyAsItIsAskedTo() {
        Rating few = RATER.sampling(32).rate(onADayOf(283.15), TRACK);
        assertThat(few.samples()).isEqualTo(32);
        assertThat(outcome(few).marginSpread().orElseThrow().samples()).isBetween(32, 32 * 16);
        assertThatThrownBy(() -> RATER.sampling(15)).hasMessageContaining("15").hasMessageContaining("16");
    }

    @Test
    void aBargainCoreIsABargainWhateverTheShopsOwnFigures() {
        Build bargain = Build.forCar(CarClass.TRACK)
                .seen(BuildField.CORE_CLASS, "bargain-aluminium")
                .build();
        Rater shop = RATER.with(Map.of(BuildField.COOLANT_LIMIT, 393.15));
        double usual = gainK(RATER, bargain);
        assertThat(usual).isPositive();
        assertThat(gainK(shop, bargain)).isCloseTo(usual, within(1e-9));
    }

    private static double gainK(Rater rater, Build build) {
        Flag flag = rater.preview(build, TRACK).flags().stream()
                .filter(f -> f.ruleId().equals("bargain-core"))
                .findFirst()
                .orElseThrow();
        return flag.consequences().get(0).value();
    }

    private static Build onADayOf(double ambientK) {
        return Builds.drift()
                .change()
                .set(BuildField.AMBIENT, Stated.measured(ambientK))
                .build();
    }

    private static DutyOutcome outcome(Rating rating) {
        return rating.duty("track").outcome();
    }
}

package headertank.calc.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fitting a fan, judging a claim, clutch fans, typical fans. Figures: independent prototype of the same equations. */
class FanDataTest {

    @ParameterizedTest
    @CsvSource({
        "0.85, 0.35, 0.12, 22, 51.1, 0.179, PLAUSIBLE",
        "1.18, 0.40, 0.14, 25, 81.1, 0.249, PLAUSIBLE",
        "1.89, 0.40, 0.14, 25, 333.1, 1.025, IMPOSSIBLE"
    })
    void claims(
            double flow, double d, double hub, double amps, double kineticW, double ratio, FanClaim.Verdict verdict) {
        FanClaim claim = FanClaim.check(FanSpec.of(1, flow, 250, d, hub), 13, amps, false);
        assertThat(claim.kineticW()).isCloseTo(kineticW, Percentage.withPercentage(0.5));
        assertThat(claim.kineticW() / claim.electricW()).isCloseTo(ratio, Percentage.withPercentage(0.5));
        assertThat(claim.verdict()).isEqualTo(verdict);
    }

    @Test
    void anImpossibleFlowIsCutToAPossibleOne() {
        FanClaim claim = FanClaim.check(FanSpec.of(1, 1.89, 250, 0.40, 0.14), 13, 25, false);
        FanClaim again = FanClaim.check(FanSpec.of(1, claim.correctedFreeFlowM3PerS(), 250, 0.40, 0.14), 13, 25, false);
        assertThat(again.kineticW() / again.electricW()).isCloseTo(0.30, within(1e-12));
        assertThat(again.correctedFreeFlowM3PerS()).isEqualTo(claim.correctedFreeFlowM3PerS());
    }

    @Test
    void brushlessMotorsMayClaimMore() {
        FanSpec fan = FanSpec.of(1, 1.5, 250, 0.40, 0.14);
        assertThat(FanClaim.check(fan, 13, 25, false).verdict()).isEqualTo(FanClaim.Verdict.IMPOSSIBLE);
        assertThat(FanClaim.check(fan, 13, 25, true).verdict()).isEqualTo(FanClaim.Verdict.DOUBTFUL);
        assertThat(FanClaim.check(FanSpec.of(1, 0.5, 250, 0.40, 0.14), 13, 25, true)
                        .verdict())
                .isEqualTo(FanClaim.Verdict.MODEST);
    }

    @Test
    void bestPowerOfTheUsualShape() {
        assertThat(FanFit.bestPowerShare(0.5)).isCloseTo(0.3156, within(5e-5));
    }

    @Test
    void missingFiguresFromElectricPower() {
        assertThat(FanFit.shutOffPa(0.85, 286, 0.5)).isCloseTo(0.30 * 286 / (0.316 * 0.85), within(1.0));
        FanSpec size = FanSpec.of(1, 1, 250, 0.35, 0.12);
        double flow = FanFit.freeFlowM3PerS(286, size.annulusM2());
        FanClaim claim = FanClaim.check(FanSpec.of(1, flow, 250, 0.35, 0.12), 13, 22, false);
        assertThat(claim.kineticW() / claim.electricW()).isCloseTo(0.22, within(1e-12));
    }

    @Test
    void fitReturnsTheFanThatMadeThePoints() {
        FanCurve truth = new FanCurve(FanSpec.of(1, 0.83, 245, 0.35, 0.12));
        List<FanFit.Point> points = List.of(
                new FanFit.Point(0.1, truth.risePa(0.1, 1.2, 1)),
                new FanFit.Point(0.4, truth.risePa(0.4, 1.2, 1)),
                new FanFit.Point(0.7, truth.risePa(0.7, 1.2, 1)));
        for (int n = 2; n <= 3; n++) {
            FanFit.Fitted fit = FanFit.throughPoints(points.subList(0, n), 0.5);
            assertThat(fit.freeFlowM3PerS()).isCloseTo(0.83, within(1e-5));
            assertThat(fit.shutOffPa()).isCloseTo(245, within(1e-2));
        }
        assertThatThrownBy(() -> FanFit.throughPoints(points.subList(0, 1), 0.5))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void clutchFollowsTheAirBehindTheCore() {
        ClutchFan fan = ClutchFan.viscous(FanSpec.of(1, 1.0, 200, 0.45, 0.15), 1.2);
        assertThat(fan.slip(330)).isEqualTo(0.25);
        assertThat(fan.slip(343.15)).isCloseTo(0.525, within(1e-12));
        assertThat(fan.slip(360)).isEqualTo(0.80);
        assertThat(fan.speedFactorAtSlip(2500 / 60.0, fan.slip(360))).isCloseTo(0.96, within(1e-12));
        assertThat(fan.speedFactorAtSlip(0, fan.slip(360))).isZero();
    }
}

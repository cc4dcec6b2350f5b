package headertank.calc.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.YesNo;
import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.StandardDuties;
import headertank.calc.result.Balance;
import org.junit.jupiter.api.Test;

/** Heat that the condenser gives to the radiator's air comes from the air conditioning that a duty asks for. */
class PointLoadTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void withTheAirConditioningOffTheCondenserIsCold() {
        assertThat(upstreamW(YesNo.YES, idle(0))).isZero();
        assertThat(upstreamW(YesNo.YES, StandardDuties.DRIFT.point("queue"))).isZero();
        assertThat(heatW(YesNo.YES, idle(0))).isEqualTo(heatW(YesNo.NO, idle(0)));
    }

    @Test
    void itsHeatGrowsWithWhatTheDutyAsksFor() {
        assertThat(upstreamW(YesNo.YES, StandardDuties.STREET.point("jam"))).isCloseTo(4000, within(1e-9));
        assertThat(upstreamW(YesNo.YES, idle(1250))).isCloseTo(2000, within(1e-9));
        assertThat(upstreamW(YesNo.NO, idle(2500))).isZero();
    }

    @Test
    void onTheRoadItCountsAsOnAndAtFullPowerAsOff() {
        assertThat(upstreamW(YesNo.YES, StandardDuties.STREET.point("hill"))).isCloseTo(4000, within(1e-9));
        assertThat(upstreamW(YesNo.YES, StandardDuties.TRACK.point("laps"))).isZero();
    }

    @Test
    void aCarWithItsAirConditioningOffIdlesAsOneWithout() {
        OperatingPoint queue = StandardDuties.DRIFT.point("queue");
        Balance.Steady with = (Balance.Steady) new SteadySolver(plant(YesNo.YES), queue).solve();
        Balance.Steady without = (Balance.Steady) new SteadySolver(plant(YesNo.NO), queue).solve();
        assertThat(with.engineOutK()).isEqualTo(without.engineOutK());
    }

    private static OperatingPoint idle(double airConditioningW) {
        return new OperatingPoint("idle", "Idle", 0, 0, 0, new Demand.Idle(2500, airConditioningW, 0.18), 0.1);
    }

    private static double upstreamW(YesNo condenser, OperatingPoint point) {
        return PointLoad.of(plant(condenser), point).upstreamW();
    }

    private static double heatW(YesNo condenser, OperatingPoint point) {
        return PointLoad.of(plant(condenser), point).coolantW();
    }

    private static Plant plant(YesNo condenser) {
        return Plant.of(RATER.resolve(Builds.road()).with(BuildField.CONDENSER, condenser));
    }
}

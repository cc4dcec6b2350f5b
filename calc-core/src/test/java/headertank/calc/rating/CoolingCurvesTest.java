package headertank.calc.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Balance;
import headertank.calc.result.CoolingCurves;
import headertank.calc.result.CoolingCurves.AirPoint;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The curves meet where the steady solver found the car. */
class CoolingCurvesTest {

    private final Rater rater = Rater.standard();
    private int states;

    @Test
    void coreAndDriveCrossAtTheSteadyStateOfEachPoint() {
        Build halfBare = Builds.road()
                .change()
                .set(BuildField.FAN_COVER, Stated.measured(0.5))
                .build();
        for (Build build : List.of(Builds.road(), Builds.drift(), Builds.track(), halfBare)) {
            Plant plant = Plant.of(rater.resolve(build));
            for (Duty duty : rater.duties().values()) {
                duty.points().forEach(p -> meets(plant, p));
            }
        }
        assertThat(states).isGreaterThan(20);
    }

    private void meets(Plant plant, OperatingPoint point) {
        if (!(new SteadySolver(plant, point).solve() instanceof Balance.Steady s)) {
            return;
        }
        states++;
        CoolingCurves curves = CurvesAround.of(
                plant,
                new CoolingCurves.State(
                        point.roadSpeedMPerS(),
                        point.yawRad(),
                        s.ambientK(),
                        s.air().inK(),
                        s.air().outK(),
                        s.air().fanSpeedFactor(),
                        s.engineOutK(),
                        s.coolant().radiatorM3PerS()));
        AirPoint at = curves.at();
        assertThat(at.offeredPa()).as(point.id()).isCloseTo(at.corePa(), within(1e-4 + 1e-6 * at.corePa()));
        assertThat(curves.heatAt().airMassKgPerS()).isCloseTo(s.air().massKgPerS(), within(1e-6));
        assertThat(curves.heatAt().heatW())
                .isCloseTo(s.core().heatW(), within(1e-5 * s.core().heatW() + 1e-3));
        for (int i = 1; i < curves.air().size(); i++) {
            AirPoint before = curves.air().get(i - 1);
            AirPoint here = curves.air().get(i);
            assertThat(here.flowM3PerS()).isGreaterThan(before.flowM3PerS());
            assertThat(here.corePa()).isGreaterThan(before.corePa());
            assertThat(here.offeredPa()).isLessThan(before.offeredPa());
            assertThat(curves.heat().get(i).heatW())
                    .isGreaterThan(curves.heat().get(i - 1).heatW());
        }
        assertThat(curves.heat().get(0).heatW()).isZero();
    }
}

package headertank.calc.transients;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointLoad;
import headertank.calc.result.IdleExpectation.Figure;
import headertank.calc.result.RunResult;
import java.util.List;
import org.junit.jupiter.api.Test;

class IdleWarmUpTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void theFansStartWhenTheirSensorReadsTheirSetPoint() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            Plant plant = plant(switched(build, 95), 20);
            IdleWarmUp warmUp = IdleWarmUp.of(plant);
            RunResult.Sample start =
                    RunSolver.run(plant, IdleWarmUp.duty(plant), RunSettings.STANDARD.at(2)).trace().stream()
                            .filter(s -> s.fanCurrentA() > 0)
                            .findFirst()
                            .orElseThrow();
            assertThat(start.fanSensorK()).isCloseTo(Physics.kelvin(95), within(0.2));
            assertThat(warmUp.figure(Figure.FANS_START_S)).hasValue(start.timeS());
            assertThat(warmUp.figure(Figure.GAUGE_AT_FAN_START_K)).hasValue(start.gaugeK());
            assertThat(warmUp.figure(Figure.THERMOSTAT_OPENS_S).orElseThrow()).isLessThan(start.timeS());
        }
    }

    /** With the thermostat shut all heat stays in metal, coolant and oil: the time is at least their heat over the heat given. */
    @Test
    void theThermostatOpensNoSoonerThanTheHeatAllows() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            Plant plant = plant(switched(build, 95), 20);
            double coldK = Physics.kelvin(20);
            PointLoad load = PointLoad.of(plant, IdleWarmUp.point(plant.resolved()), coldK, coldK);
            Masses m = Masses.of(plant);
            double rise = plant.thermostat().openingK() - Physics.kelvin(20);
            double least = (m.metalJPerK() + m.blockJPerK()) * rise / (load.coolantW() + load.oilW());
            double opens =
                    IdleWarmUp.of(plant).figure(Figure.THERMOSTAT_OPENS_S).orElseThrow();
            assertThat(opens).isBetween(least, 3 * least);
        }
    }

    @Test
    void aColderWorkshopTakesLonger() {
        Build build = switched(Builds.road(), 95);
        double cold = IdleWarmUp.of(plant(build, 0)).figure(Figure.FANS_START_S).orElseThrow();
        double warm =
                IdleWarmUp.of(plant(build, 30)).figure(Figure.FANS_START_S).orElseThrow();
        assertThat(cold).isGreaterThan(warm + 60);
    }

    @Test
    void startingCurrentIsThatOfARelayAndRunningCurrentThatOfTheFans() {
        Build build = switched(Builds.road(), 95)
                .change()
                .set(BuildField.FAN_START_CURRENT, Stated.measured(30))
                .set(BuildField.ALTERNATOR, Stated.measured(180))
                .build();
        IdleWarmUp warmUp = IdleWarmUp.of(plant(build, 20));
        assertThat(warmUp.figure(Figure.FAN_START_A).orElseThrow()).isCloseTo(30, within(1e-6));
        assertThat(warmUp.figure(Figure.FAN_RUNNING_A).orElseThrow()).isCloseTo(20, within(1e-6));
        assertThat(warmUp.figure(Figure.VOLTAGE_V).orElseThrow()).isCloseTo(13.5, within(0.01));
    }

    @Test
    void theDropAcrossTheCoreCarriesAboutTheIdleHeat() {
        Plant plant = plant(switched(Builds.road(), 95), 20);
        assertThat(IdleWarmUp.of(plant).figure(Figure.CORE_DROP_K).orElseThrow())
                .isBetween(2.0, 40.0);
    }

    @Test
    void aCarWithoutElectricFansOrThermostatHasNoneOfTheirFigures() {
        Build build = Builds.road()
                .change()
                .seen(BuildField.FAN_DRIVE, FanDrive.CLUTCH)
                .seen(BuildField.THERMOSTAT, ThermostatFitting.REMOVED)
                .build();
        assertThat(IdleWarmUp.of(plant(build, 20)).figures()).containsOnlyKeys(Figure.CORE_DROP_K, Figure.VOLTAGE_V);
    }

    @Test
    void fansThatAlwaysTurnHaveNoStartToWaitFor() {
        assertThat(IdleWarmUp.of(plant(Builds.drift(), 20)).figures())
                .doesNotContainKeys(Figure.FANS_START_S, Figure.GAUGE_AT_FAN_START_K)
                .containsKeys(Figure.FAN_RUNNING_A);
    }

    private static Build switched(Build build, double setC) {
        return build.change()
                .seen(BuildField.CONTROL_KIND, FanControlKind.SWITCH)
                .set(BuildField.CONTROL_SET, Stated.measured(Physics.kelvin(setC)))
                .build();
    }

    private static Plant plant(Build build, double ambientC) {
        return Plant.of(RATER.resolve(build).with(BuildField.AMBIENT, Physics.kelvin(ambientC)));
    }
}

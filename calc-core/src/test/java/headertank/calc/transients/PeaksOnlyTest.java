package headertank.calc.transients;

import static headertank.calc.quantity.Physics.kelvin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Duty;
import headertank.calc.duty.Schedule;
import headertank.calc.duty.StandardDuties;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A run for peaks only, by our own stepping, beside the full run by the library's integrator. */
class PeaksOnlyTest {

    private static final double PEAK_K = 0.02;

    private final Plant drift = plant(Builds.drift());

    static List<FanControlSpec> controls() {
        return List.of(
                new FanControlSpec.AlwaysOn(),
                new FanControlSpec.Switch(FanControlSpec.SET.max(), 5),
                FanControlSpec.Ramp.to(kelvin(90)),
                new FanControlSpec.Switch(kelvin(95), 5),
                new FanControlSpec.Switch(kelvin(85), 3),
                new FanControlSpec.TwoStep(kelvin(88), kelvin(95), 4, 0.5),
                new FanControlSpec.Table(
                        List.of(
                                new FanControlSpec.Row(kelvin(80), 0),
                                new FanControlSpec.Row(kelvin(90), 0.4),
                                new FanControlSpec.Row(kelvin(98), 1)),
                        3));
    }

    @ParameterizedTest
    @MethodSource("controls")
    void itPeaksWhereTheFullRunDoes(FanControlSpec control) {
        for (Plant car : List.of(drift, plant(Builds.track()), plant(Builds.road()))) {
            same(car, StandardDuties.DRIFT, control);
        }
    }

    @ParameterizedTest
    @MethodSource("controls")
    void aSensorInAHoseChangesNothingOfIt(FanControlSpec control) {
        Build hose = Builds.drift()
                .change()
                .seen(BuildField.FAN_SENSOR, SensorPlacement.RADIATOR_HOSE)
                .build();
        Duty heats = new Duty(
                "heats",
                "Heats",
                StandardDuties.DRIFT.points(),
                Optional.of(new Schedule(
                        kelvin(70),
                        List.of(
                                new Schedule.Phase("queue", 40),
                                new Schedule.Phase("run", 90),
                                new Schedule.Phase("queue", 400)))),
                "test");
        same(plant(hose), heats, control);
    }

    private static void same(Plant car, Duty duty, FanControlSpec control) {
        RunResult full = RunSolver.run(car, duty, RunSettings.STANDARD.with(control));
        RunResult peaks = RunSolver.run(car, duty, RunSettings.PEAKS_ONLY.with(control));
        assertThat(peaks.peaks().coolantK()).isCloseTo(full.peaks().coolantK(), within(PEAK_K));
        assertThat(peaks.peaks().oilK()).isCloseTo(full.peaks().oilK(), within(PEAK_K));
        assertThat(peaks.peaks().lowestBoilingMarginK()).isCloseTo(full.peaks().lowestBoilingMarginK(), within(PEAK_K));
        assertThat(peaks.fanStarts()).isEqualTo(full.fanStarts());
        assertThat(peaks.numerics().events()).isEqualTo(full.numerics().events());
        assertThat(peaks.numerics().eventErrorK()).isLessThan(1e-5);
        // 3.8 mAh of 3.35 Ah apart on one of the controls: a third of a second of fans of 44 A.
        assertThat(peaks.charge().fanAmpereHours()).isCloseTo(full.charge().fanAmpereHours(), within(5e-3));
        assertThat(peaks.energy().errorShare()).isCloseTo(0, within(1e-9));
        assertThat(RunSolver.run(car, duty, RunSettings.PEAKS_ONLY.with(control)))
                .as("the same again to the last bit")
                .isEqualTo(peaks);
    }

    private static Plant plant(Build build) {
        return Plant.of(Rater.standard().resolve(build));
    }
}

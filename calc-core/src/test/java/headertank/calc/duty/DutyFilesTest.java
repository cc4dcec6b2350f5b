package headertank.calc.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanControlKind;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.Plant;
import headertank.calc.result.RunResult;
import headertank.calc.transients.RunSolver;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The schedules that come with the service, as plain files. */
class DutyFilesTest {

    private static final Path FILES = Path.of("..", "app", "src", "main", "resources", "duties");

    @Test
    void everyFileIsReadNamesItsSourceAndHasASoak() throws IOException {
        for (String name : new String[] {"street", "track", "drift"}) {
            Duty d = read(name);
            assertThat(d.source()).as(name).contains("modelling choice");
            assertThat(d.schedule()).as(name).isPresent();
            assertThat(d.points()).as(name).anyMatch(OperatingPoint::engineOff);
            assertThat(ScheduleCsv.parse(ScheduleCsv.write(d)).schedule()).isEqualTo(d.schedule());
            d.points().forEach(p -> assertThat(d.schedule().orElseThrow().phases())
                    .anyMatch(ph -> ph.pointId().equals(p.id())));
        }
        assertThat(read("street").judged()).isEqualTo(Duty.Judged.RUN_AND_IDLE);
        assertThat(read("track").judged()).isEqualTo(Duty.Judged.RUN_AND_IDLE);
        assertThat(read("drift").judged()).isEqualTo(Duty.Judged.RUN_AND_IDLE);
    }

    @Test
    void everyFileRunsOnItsCarAndKeepsItsEnergy() throws IOException {
        Map<String, Build> cars = Map.of("street", Builds.road(), "track", Builds.track(), "drift", Builds.drift());
        for (String name : cars.keySet()) {
            RunResult run = run(read(name), cars.get(name));
            assertThat(run.energy().errorShare()).as(name).isCloseTo(0, within(1e-9));
            assertThat(Physics.celsius(run.peaks().coolantK())).as(name).isBetween(85.0, 125.0);
        }
    }

    @Test
    void aColdStartWarmsUpThroughTheThermostat() throws IOException {
        RunResult run = run(read("street"), Builds.road());
        assertThat(Physics.celsius(run.trace().get(0).coolantK())).isCloseTo(25, within(0.01));
        RunResult.Sample warm = run.trace().stream()
                .filter(s -> s.coolantK() > Physics.kelvin(80))
                .findFirst()
                .orElseThrow();
        assertThat(warm.timeS()).as("guessed warm-up of a few minutes").isBetween(120.0, 900.0);
        assertThat(run.trace().stream().filter(s -> s.timeS() < warm.timeS() - 60))
                .allMatch(s -> s.thermostatLift() < 0.1);
    }

    @Test
    void theDriftFileIsTheDriftDutyWithBurnInAndSoak() throws IOException {
        Duty d = read("drift");
        for (OperatingPoint p : StandardDuties.DRIFT.points()) {
            assertThat(d.point(p.id()).demand()).isEqualTo(p.demand());
            assertThat(d.point(p.id()).roadSpeedMPerS()).isCloseTo(p.roadSpeedMPerS(), within(1e-9));
        }
    }

    private static RunResult run(Duty duty, Build build) {
        Build switched = build.change()
                .seen(BuildField.CONTROL_KIND, FanControlKind.RAMP)
                .build();
        return RunSolver.run(Plant.of(Rater.standard().resolve(switched)), duty);
    }

    private static Duty read(String name) throws IOException {
        return ScheduleCsv.parse(Files.readString(FILES.resolve(name + ".csv"), StandardCharsets.UTF_8));
    }
}

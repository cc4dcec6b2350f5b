package headertank.calc.carspec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import headertank.calc.Rater;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.OilCooling;
import headertank.calc.choice.OilThermostatFitting;
import headertank.calc.choice.PumpDrive;
import headertank.calc.control.FanControlSpec;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.rating.FanControlOf;
import headertank.calc.rating.Plant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two steps, a table, a soft start, an oil thermostat and a pump that runs on, as fields of a car. */
class FanControlFieldsTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void twoStepsBecomeTheControlThatWasStated() {
        Build build = car().seen(BuildField.CONTROL_KIND, FanControlKind.TWO_STEP)
                .set(BuildField.CONTROL_LOW_SET, celsius(85))
                .set(BuildField.CONTROL_SET, celsius(95))
                .set(BuildField.CONTROL_BAND, Stated.measured(4))
                .set(BuildField.CONTROL_LOW_DUTY, Stated.measured(0.4))
                .build();
        assertThat(control(build)).isEqualTo(new FanControlSpec.TwoStep(358.15, 368.15, 4, 0.4));
    }

    @Test
    void twoStepsOfWhichOnlyTheLowSetPointIsKnownStayInOrder() {
        FanControlSpec.TwoStep steps = (FanControlSpec.TwoStep)
                control(car().set(BuildField.CONTROL_LOW_SET, celsius(95)).build());
        assertThat(steps.lowSetK()).isEqualTo(368.15);
        assertThat(steps.fullSetK()).isEqualTo(368.15 + FanControlSpec.TwoStep.USUAL_STEP_K);
        assertThat(steps.lowDuty()).isEqualTo(FanControlSpec.TwoStep.USUAL_LOW_DUTY);
    }

    @Test
    void aTableOfTwoToFiveRowsIsReadAndGapsAreSkipped() {
        Build build = row(row(row(car(), 0, 80, 0), 2, 90, 0.4), 4, 98, 1)
                .set(BuildField.CONTROL_SOFT_START, Stated.measured(5))
                .build();
        assertThat(control(build))
                .isEqualTo(new FanControlSpec.Table(
                        List.of(
                                new FanControlSpec.Row(Physics.kelvin(80), 0),
                                new FanControlSpec.Row(Physics.kelvin(90), 0.4),
                                new FanControlSpec.Row(Physics.kelvin(98), 1)),
                        5));
        assertThat(RATER.resolve(build).assumptions())
                .extracting(Assumption::field)
                .doesNotContain(BuildField.CONTROL_ROW_1_K, BuildField.CONTROL_ROW_2_K, BuildField.CONTROL_SOFT_START);
    }

    @Test
    void aTableOfWhichNothingIsKnownIsTheUsualRamp() {
        Build build = car().seen(BuildField.CONTROL_KIND, FanControlKind.TABLE).build();
        FanControlSpec.Table table = (FanControlSpec.Table) control(build);
        double set = RATER.resolve(build).value(BuildField.CONTROL_SET);
        assertThat(table.dutyAt(set)).isEqualTo(1);
        assertThat(table.dutyAt(set - FanControlSpec.Ramp.USUAL_BAND_K)).isZero();
        assertThat(RATER.resolve(build).assumptions())
                .extracting(Assumption::field)
                .contains(BuildField.CONTROL_ROW_1_K, BuildField.CONTROL_ROW_2_DUTY);
    }

    @Test
    void aTableThatFallsIsRefusedWithItsField() {
        assertThat(problems(row(row(car(), 0, 90, 0), 1, 85, 1)))
                .containsExactly("fanControl.row2K CONTRADICTION 358.150");
        assertThat(problems(row(row(row(car(), 0, 80, 0), 1, 85, 0.6), 3, 95, 0.5)))
                .containsExactly("fanControl.row4Duty CONTRADICTION 0.500000");
    }

    @Test
    void halfARowAndALonelyRowAreRefused() {
        assertThat(problems(row(row(car(), 0, 80, 0), 1, 90, 1).set(BuildField.CONTROL_ROW_3_K, celsius(95))))
                .containsExactly("fanControl.row3Duty CONTRADICTION ");
        assertThat(problems(row(car(), 0, 80, 0))).containsExactly("fanControl.row2K CONTRADICTION ");
    }

    @Test
    void rowsOfATableThatIsNotUsedMayBeWrong() {
        assertThat(control(row(row(car(), 0, 90, 0), 1, 85, 1)
                        .seen(BuildField.CONTROL_KIND, FanControlKind.SWITCH)
                        .build()))
                .isInstanceOf(FanControlSpec.Switch.class);
    }

    @Test
    void aLowStepAboveFullSpeedIsRefused() {
        assertThat(problems(car().seen(BuildField.CONTROL_KIND, FanControlKind.TWO_STEP)
                        .set(BuildField.CONTROL_LOW_SET, celsius(95))
                        .set(BuildField.CONTROL_SET, celsius(90))))
                .containsExactly("fanControl.lowSetK CONTRADICTION 368.150");
    }

    @Test
    void statesBetweenTwoTablesStillGiveAControl() {
        Build low = row(row(car(), 0, 80, 0), 1, 85, 1).build();
        Build high = row(row(car(), 0, 95, 0), 1, 100, 1).build();
        Build mixed = low.withFieldOf(high, BuildField.CONTROL_ROW_1_K);
        FanControlSpec.Table table = (FanControlSpec.Table) control(mixed);
        assertThat(table.rows()).isSortedAccordingTo((a, b) -> Double.compare(a.sensedK(), b.sensedK()));
    }

    @Test
    void softStartAndOilThermostatReachTheModels() {
        Build build = car().seen(BuildField.CONTROL_KIND, FanControlKind.RAMP)
                .set(BuildField.CONTROL_SOFT_START, Stated.measured(7))
                .seen(BuildField.OIL_COOLER, OilCooling.AIR)
                .set(BuildField.OIL_THERMOSTAT_OPENING, celsius(95))
                .set(BuildField.OIL_THERMOSTAT_OPEN, celsius(110))
                .build();
        Plant plant = Plant.of(RATER.resolve(build));
        assertThat(plant.control().softStartS()).isEqualTo(7);
        assertThat(plant.oil().thermostat().openingK()).isEqualTo(Physics.kelvin(95));
        assertThat(plant.oil().thermostat().fullOpenK()).isEqualTo(Physics.kelvin(110));
        assertThat(plant.oil().thermostat().governedShare()).isPositive();
        Plant open = Plant.of(RATER.resolve(build.change()
                .seen(BuildField.OIL_THERMOSTAT, OilThermostatFitting.NONE)
                .build()));
        assertThat(open.oil().thermostat().governedShare()).isZero();
    }

    @Test
    void onlyAnElectricPumpRunsOn() {
        Build.Builder belt =
                car().seen(BuildField.PUMP_DRIVE, PumpDrive.ENGINE).set(BuildField.PUMP_RUN_ON, Stated.measured(60));
        assertThat(problems(belt)).containsExactly("pump.runOnS CONTRADICTION 60.0000");
        assertThat(Plant.of(RATER.resolve(belt.seen(BuildField.PUMP_DRIVE, PumpDrive.ELECTRIC)
                                .build()))
                        .pumpRunOnS())
                .isEqualTo(60);
    }

    @Test
    void noneOfThemIsAskedFirst() {
        assertThat(List.of(BuildField.values()).stream()
                        .filter(f -> f.group() == FieldGroup.FAN_CONTROL)
                        .filter(BuildField::essential))
                .isEmpty();
    }

    private static Build.Builder car() {
        return Build.forCar(CarClass.DRIFT);
    }

    private static Build.Builder row(Build.Builder car, int index, double celsius, double duty) {
        ControlTable.Row row = ControlTable.ROWS.get(index);
        return car.set(row.temperature(), celsius(celsius)).set(row.duty(), Stated.measured(duty));
    }

    private static Stated celsius(double t) {
        return Stated.measured(Physics.kelvin(t));
    }

    private static FanControlSpec control(Build build) {
        return FanControlOf.resolved(RATER.resolve(build));
    }

    private static List<String> problems(Build.Builder car) {
        return catchThrowableOfType(InputException.class, car::build).problems().stream()
                .map((InputProblem p) -> p.field() + " " + p.code() + " " + p.value())
                .toList();
    }
}

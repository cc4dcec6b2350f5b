package headertank.calc.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.FanControlKind;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.result.IdleExpectation;
import headertank.calc.result.IdleExpectation.Figure;
import org.junit.jupiter.api.Test;

class IdleExpectationTest {

    private static final Rater RATER = Rater.standard();
    private static final Build ROAD = Builds.road()
            .change()
            .seen(BuildField.CONTROL_KIND, FanControlKind.SWITCH)
            .set(BuildField.CONTROL_SET, Stated.measured(Physics.kelvin(95)))
            .build();

    @Test
    void everyFigureLiesInItsBandWhichIsAtLeastAsWideAsAReadingIsGood() {
        IdleExpectation expected = RATER.idleInWorkshop(ROAD, Physics.kelvin(20));
        assertThat(expected.bands()).containsOnlyKeys(Figure.values());
        assertThat(expected.samples()).isGreaterThan(40);
        expected.bands().forEach((figure, band) -> {
            double allowance = IdleInWorkshop.readingAllowance(figure, band.expected());
            assertThat(band.expected()).as(figure.name()).isBetween(band.low(), band.high());
            assertThat(band.high() - band.low()).as(figure.name()).isGreaterThanOrEqualTo(allowance);
        });
    }

    @Test
    void theSameCarInTheSameAirIsExpectedToDoTheSame() {
        assertThat(RATER.idleInWorkshop(ROAD, 290)).isEqualTo(RATER.idleInWorkshop(ROAD, 290));
    }

    @Test
    void whatIsKnownBetterIsExpectedMoreNarrowly() {
        Build guessed =
                ROAD.change().set(BuildField.FAN_CURRENT, Stated.guessed(20)).build();
        assertThat(width(guessed)).isGreaterThan(width(ROAD));
    }

    @Test
    void aColdestDayAboveTheWorkshopsAirIsNoContradictionAndAFurnaceIsRefused() {
        Build build = ROAD.change()
                .set(BuildField.LOWEST_AMBIENT, Stated.measured(280))
                .build();
        assertThat(RATER.idleInWorkshop(build, 270).ambientK()).isEqualTo(270);
        assertThatThrownBy(() -> RATER.idleInWorkshop(ROAD, 400)).isInstanceOf(InputException.class);
    }

    /** A stock car that only its engine is known of charges in the workshop with its fan on: blower and lights are off. */
    @Test
    void aStockCarHoldsItsChargingVoltageWithItsFanOn() {
        Build stock = Build.forCar(CarClass.MODERN_STREET)
                .set(BuildField.ENGINE_POWER, Stated.datasheet(80e3))
                .build();
        double ofClass = RATER.resolve(stock).value(BuildField.BASE_LOAD);
        Build stated = stock.change()
                .set(BuildField.BASE_LOAD, Stated.measured(ofClass))
                .build();
        assertThat(volts(stock)).isCloseTo(13.5, within(0.01));
        assertThat(volts(stated)).as("a load that somebody measured is there").isLessThan(13.3);
    }

    private static double volts(Build build) {
        return RATER.idleInWorkshop(build, 293.15).bands().get(Figure.VOLTAGE_V).expected();
    }

    private static double width(Build build) {
        IdleExpectation.Band band = RATER.idleInWorkshop(build, 293.15).bands().get(Figure.FAN_RUNNING_A);
        return band.high() - band.low();
    }
}

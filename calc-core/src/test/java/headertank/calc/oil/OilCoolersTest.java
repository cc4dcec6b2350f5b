package headertank.calc.oil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.OilCoolerPlace;
import headertank.calc.choice.OilCooling;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Balance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OilCoolersTest {

    private static final Rater RATER = Rater.standard();

    /** Stock cars on a motorway run their oil at 95 to 120 deg C: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "PETROL_NATURAL, 85, 1.5, NONE",
        "PETROL_NATURAL, 85, 1.5, COOLANT",
        "PETROL_NATURAL, 150, 2.4, COOLANT",
        "PETROL_TURBO, 150, 1.8, COOLANT",
        "PETROL_NATURAL, 300, 5.7, NONE",
        "PETROL_NATURAL, 300, 5.7, COOLANT",
        "DIESEL_TURBO, 110, 2.0, COOLANT"
    })
    void stockCarsOnAMotorway(String engine, double kilowatts, double litres, String cooler) {
        Build build = stock(kilowatts, litres)
                .seen(BuildField.ENGINE_CLASS, engine)
                .seen(BuildField.OIL_COOLER, cooler)
                .build();
        assertThat(Physics.celsius(steady(build, StandardDuties.STREET.point("motorway"))
                        .oil()
                        .oilK()))
                .isBetween(93.0, 122.0);
    }

    /** Without a cooler a strong stock engine is too hot for laps, by tens of degrees and not by hundreds. */
    @Test
    void aStockEightCylinderOnTrackNeedsACooler() {
        Build build =
                stock(300, 5.7).seen(BuildField.OIL_COOLER, OilCooling.NONE).build();
        assertThat(Physics.celsius(
                        steady(build, StandardDuties.TRACK.point("laps")).oil().oilK()))
                .isBetween(125.0, 175.0);
    }

    @Test
    void aCoolerInFrontOfTheCoreLivesOnFansAndOneElsewhereOnSpeed() {
        OilCoolers front = coolers(OilCoolerPlace.BEFORE_CORE);
        OilCoolers wing = coolers(OilCoolerPlace.ELSEWHERE);
        double sump = coolers(OilCoolerPlace.BEFORE_CORE).at(50, 0, 0).toAirWPerK() - 0.02 * 380;
        assertThat(wing.at(50, 0, 3).toAirWPerK()).isCloseTo(0.02 * 380 + sump, within(1e-9));
        assertThat(front.at(50, 0, 3).toAirWPerK())
                .isGreaterThan(10 * wing.at(50, 0, 3).toAirWPerK());
        assertThat(wing.at(50, 30, 0).toAirWPerK()).isGreaterThan(380);
        assertThat(front.at(50, 30, 0).toAirWPerK()).isLessThan(100);
    }

    /** Idling with no fan at all, an oil-air cooler in front of the core keeps nothing cool. */
    @Test
    void anOilCoolerWithoutAirDoesNotReplaceAFan() {
        Build build = stock(200, 3.0)
                .seen(BuildField.FAN_DRIVE, FanDrive.NONE)
                .seen(BuildField.OIL_COOLER, OilCooling.AIR)
                .set(BuildField.OIL_COOLER_CONDUCTANCE, Stated.measured(380))
                .build();
        OperatingPoint still = StandardDuties.DRIFT.point("queue");
        assertThat(RATER.at(build, still).balance())
                .satisfiesAnyOf(
                        b -> assertThat(b).isInstanceOf(Balance.None.class),
                        b -> assertThat(((Balance.Steady) b).engineOutK()).isGreaterThan(Physics.kelvin(125)));
    }

    private static OilCoolers coolers(OilCoolerPlace place) {
        return new OilCoolers(3e-3, 6, false, 380, place, OilThermostat.NONE, 1);
    }

    private static Build.Builder stock(double kilowatts, double litres) {
        return Build.forCar(CarClass.MODERN_STREET)
                .set(BuildField.ENGINE_POWER, Stated.datasheet(1000 * kilowatts))
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.datasheet(1e-3 * litres))
                .set(BuildField.AMBIENT, Stated.measured(Physics.kelvin(30)));
    }

    private static Balance.Steady steady(Build build, OperatingPoint point) {
        return (Balance.Steady) RATER.at(build, point).balance();
    }
}

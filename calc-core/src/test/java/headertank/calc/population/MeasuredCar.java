package headertank.calc.population;

import static headertank.calc.quantity.Physics.kelvin;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Stated;

/**
 * A real car whose diagnosis port was logged by others, as a shop that never saw it would enter it: a petrol car of 2014 with
 * 1496 cm3 and one electric fan (data set carOBD, cited in <i>Detecting Anomalies in the Engine Coolant Sensor Using
 * One-Class Classifiers</i>, IEEE 89th VTC 2019, 8891367; open, free to everyone).
 *
 * <p>Only what the data set states counts as measured. The rest was guessed once, for a car of that size and year, before any
 * model met the logs, and is not to be moved: the comparison is worth what these guesses were made without.
 */
public final class MeasuredCar {

    /** Air in the shade at the cold starts: the intake's first reading, 26 to 28 deg C [K]. */
    public static final double AMBIENT_K = kelvin(27);

    private MeasuredCar() {}

    /** @return the build; every {@code guessed} line is a guess for the class, named in the published check */
    public static Build build() {
        return Build.forCar(CarClass.MODERN_STREET)
                // stated by the data set
                .seen(BuildField.ENGINE_CLASS, "PETROL_NATURAL")
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.measured(1.496e-3))
                .set(BuildField.ENGINE_CYLINDERS, Stated.measured(4))
                .set(BuildField.ENGINE_IDLE, Stated.measured(650 / 60.0))
                .seen(BuildField.FAN_DRIVE, "ELECTRIC")
                .set(BuildField.FAN_COUNT, Stated.measured(1))
                .set(BuildField.ALTITUDE, Stated.measured(10))
                .set(BuildField.AMBIENT, Stated.measured(AMBIENT_K))
                // guessed: about 57 kW per litre, a small car's mass with driver
                .set(BuildField.ENGINE_POWER, Stated.guessed(85e3))
                .set(BuildField.ENGINE_SPEED, Stated.guessed(6000 / 60.0))
                .set(BuildField.CAR_MASS, Stated.guessed(1150))
                .seen(BuildField.FUEL, "PETROL_E10")
                // guessed: one thin brazed row behind a condenser
                .seen(BuildField.CORE_CLASS, "thin-original")
                .set(BuildField.CORE_WIDTH, Stated.guessed(0.55))
                .set(BuildField.CORE_HEIGHT, Stated.guessed(0.36))
                .set(BuildField.CORE_DEPTH, Stated.guessed(0.018))
                .seen(BuildField.CONDENSER, "YES")
                // guessed: one fan of 0.32 m at 12 A, switched at 95 and 90 deg C
                .set(BuildField.FAN_DIAMETER, Stated.guessed(0.32))
                .set(BuildField.FAN_CURRENT, Stated.guessed(12))
                .seen(BuildField.CONTROL_KIND, "SWITCH")
                .set(BuildField.CONTROL_SET, Stated.guessed(kelvin(95)))
                .set(BuildField.CONTROL_BAND, Stated.guessed(5))
                // guessed: 5.5 l of coolant, half of it glycol, a thermostat of 87 deg C
                .seen(BuildField.COOLANT_BASE, "ETHYLENE_GLYCOL")
                .set(BuildField.COOLANT_GLYCOL, Stated.guessed(0.50))
                .set(BuildField.COOLANT_VOLUME, Stated.guessed(5.5e-3))
                .set(BuildField.THERMOSTAT_OPENING, Stated.guessed(kelvin(87)))
                .seen(BuildField.OIL_COOLER, "NONE")
                // guessed: 80 A, 18 A with nothing switched on
                .set(BuildField.ALTERNATOR, Stated.guessed(80))
                .set(BuildField.BASE_LOAD, Stated.guessed(18))
                .build();
    }
}

package headertank.calc.rating;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;

/** What is left until a temperature that bounds: the bound less the temperature [K], below 0 beyond it. */
public final class Margin {

    private Margin() {}

    /** @return what coolant of this temperature [K] leaves until the coolant's limit of the car [K] */
    public static double coolantK(Resolved car, double coolantK) {
        return of(car.value(BuildField.COOLANT_LIMIT), coolantK);
    }

    /** @return what oil of this temperature [K] leaves until the oil's limit of the car [K] */
    public static double oilK(Resolved car, double oilK) {
        return of(car.value(BuildField.OIL_LIMIT), oilK);
    }

    /** @return what coolant of this temperature [K] leaves until it boils [K] */
    public static double boilingK(double boilingK, double coolantK) {
        return of(boilingK, coolantK);
    }

    private static double of(double boundK, double temperatureK) {
        return boundK - temperatureK;
    }
}

package headertank.calc.quantity;

/** Constants that several packages need. */
public final class Physics {

    /** 0 degrees Celsius [K]; by definition of the Celsius scale. */
    public static final double ZERO_CELSIUS_K = 273.15;

    /** Standard atmosphere at sea level [Pa]; ISO 2533:1975. */
    public static final double STANDARD_PRESSURE_PA = 101325.0;

    /** Standard gravity [m/s2]; ISO 2533:1975. */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    /** Stefan-Boltzmann constant [W/m2K4]; CODATA 2018. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private Physics() {}

    /** @return kelvin for degrees Celsius */
    public static double kelvin(double celsius) {
        return celsius + ZERO_CELSIUS_K;
    }

    /** @return degrees Celsius for kelvin */
    public static double celsius(double kelvin) {
        return kelvin - ZERO_CELSIUS_K;
    }
}

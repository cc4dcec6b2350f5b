package headertank.calc.engine;

import headertank.calc.quantity.Physics;
import org.hipparchus.util.FastMath;

/**
 * What is different while an engine is cold: oil that rubs more, walls that take more heat, an idle that is raised. All are one
 * from {@link #WARM_K} on.
 */
public final class ColdEngine {

    /** From here an engine counts as warm, as the steady balances take it: where the coolest thermostats open, 78 deg C [K]. */
    public static final double WARM_K = Physics.kelvin(78);

    /** The warm engine that a cold one is compared with, 90 deg C [K]. */
    private static final double REFERENCE_K = Physics.kelvin(90);

    private static final double COLDEST_OIL_K = Physics.kelvin(-10);

    /** A multigrade oil, 100 and 14.5 mm2/s at 40 and 100 deg C: common practice, no source. */
    private static final double AT_40 = FastMath.log10(FastMath.log10(100 + 0.7));

    private static final double AT_100 = FastMath.log10(FastMath.log10(14.5 + 0.7));
    private static final double SLOPE =
            (AT_40 - AT_100) / (FastMath.log10(Physics.kelvin(100)) - FastMath.log10(Physics.kelvin(40)));
    private static final double WARM_OIL = viscosity(REFERENCE_K);

    /** Exponent of viscosity: P. J. Shayler et al., SAE 2005-01-1654, found 0.19 to 0.24 (from memory). */
    private static final double VISCOSITY_EXPONENT = 0.24;

    private static final double MEAN_GAS_K = 890;

    /**
     * Idle at 20 deg C above that of the warm engine, 1200 against 750 1/min: common practice, no source. A logged car that idles at
     * 650 when warm had 945 at 42.5 and 765 at 62.5 deg C, where this gives 916 and 752 (data set carOBD, figures computed from its rows)
     * [rev/s].
     */
    private static final double COLD_IDLE_PER_S = 450.0 / 60;

    private static final double COLD_IDLE_K = Physics.kelvin(20);
    private static final double WARM_IDLE_K = Physics.kelvin(75);

    private ColdEngine() {}

    /** @return what rubs over what it rubs with warm oil, (viscosity over that at 90 deg C)^0.24, at least 1 [-] */
    public static double friction(double oilK) {
        return oilK >= WARM_K ? 1 : FastMath.pow(viscosity(oilK) / WARM_OIL, VISCOSITY_EXPONENT);
    }

    /** Kinematic viscosity by the straight line of ASTM D341: log log(nu + 0.7) against log T (from memory), from -10 deg C [mm2/s]. */
    private static double viscosity(double oilK) {
        double y = AT_40 - SLOPE * (FastMath.log10(Math.max(oilK, COLDEST_OIL_K)) - FastMath.log10(Physics.kelvin(40)));
        return FastMath.pow(10, FastMath.pow(10, y)) - 0.7;
    }

    /**
     * @return heat through walls that are cooled by colder coolant, over that of the warm engine: (890 K - T)/(890 K - 363 K),
     *     mean gas temperature of Taylor and Toong (from memory), at least 1 [-]
     */
    public static double wallHeat(double coolantK) {
        return coolantK >= WARM_K ? 1 : (MEAN_GAS_K - coolantK) / (MEAN_GAS_K - REFERENCE_K);
    }

    /** @return idle speed above that of the warm engine: 450 1/min at 20 deg C, straight down to nothing at 75 [rev/s] */
    public static double addedIdlePerS(double coolantK) {
        double cold = (WARM_IDLE_K - coolantK) / (WARM_IDLE_K - COLD_IDLE_K);
        return COLD_IDLE_PER_S * Math.max(0, Math.min(1.2, cold));
    }
}

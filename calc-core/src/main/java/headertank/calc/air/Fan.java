package headertank.calc.air;

import headertank.calc.quantity.OutOfRangeException;

/**
 * All the fans of a radiator, alike and side by side, as one pressure rise against mass flow. Pulling fans see the air behind
 * the core, pushing fans the air before it. Formula and sources: {@link FanSpec}.
 */
public final class Fan {

    /** Voltage at which electric fans are stated [V]. */
    public static final double REFERENCE_V = 13;

    private final FanCurve curve;
    private final boolean pushing;
    private final int count;

    private Fan(FanSpec spec) {
        this.curve = new FanCurve(spec);
        this.pushing = spec.pushing();
        this.count = spec.count();
    }

    /** A set of like fans over one shroud. */
    public static Fan of(FanSpec spec) {
        return new Fan(spec);
    }

    /**
     * Speed of a brushed electric fan over its reference speed, {@code duty voltage/13}; sigma 5 %, modelling choice.
     *
     * @param duty share of full drive, 0 to 1 [-]
     * @param voltageV at the fan's terminals [V], 0 to 60
     */
    public static double speedFactor(double duty, double voltageV) {
        OutOfRangeException.require("duty", duty, 0, 1);
        OutOfRangeException.require("voltageV", voltageV, 0, 60);
        return duty * voltageV / REFERENCE_V;
    }

    /** @return number of fans */
    public int count() {
        return count;
    }

    /**
     * Rise in air of one density.
     *
     * @param flowM3PerS flow of all fans together [m3/s]; negative is reverse flow
     * @param densityKgPerM3 air density at the fans [kg/m3]
     * @param speedFactor fan speed over reference speed [-]; 0 without power
     * @return pressure rise [Pa], negative when the fans resist
     */
    public double risePa(double flowM3PerS, double densityKgPerM3, double speedFactor) {
        return curve.risePa(flowM3PerS / count, densityKgPerM3, speedFactor);
    }

    /**
     * Rise at a mass flow.
     *
     * @param massKgPerS air through the fans [kg/s]
     * @param coldKgPerM3 density before the core [kg/m3]
     * @param hotKgPerM3 density behind the core [kg/m3]
     * @param speedFactor fan speed over reference speed [-]
     * @return pressure rise [Pa]
     */
    double riseAtMassPa(double massKgPerS, double coldKgPerM3, double hotKgPerM3, double speedFactor) {
        double rho = density(coldKgPerM3, hotKgPerM3);
        return risePa(massKgPerS / rho, rho, speedFactor);
    }

    /** @return density of the air that the fans see [kg/m3] */
    double density(double coldKgPerM3, double hotKgPerM3) {
        return pushing ? coldKgPerM3 : hotKgPerM3;
    }
}

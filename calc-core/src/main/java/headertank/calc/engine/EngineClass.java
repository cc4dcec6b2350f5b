package headertank.calc.engine;

/**
 * Kinds of engine, with the shares that split their heat.
 *
 * <p>All shares are modelling choices for this project (an engine's own measurement replaces them): gross indicated
 * efficiency on released heat {@code eta_g}; share of released heat that crosses the chamber walls at rated power {@code
 * phi_g}, with one standard deviation; share of released heat to the oil (piston cooling) {@code phi_o}; shares of friction
 * power to coolant and oil {@code psi_c}, {@code psi_o}; share of released heat through a water-cooled turbine housing
 * {@code t_x}. For orientation, J. B. Heywood, <i>Internal Combustion Engine Fundamentals</i>, 1988, Table 12.1 (from
 * memory), at maximum power, percent of fuel: spark ignition brake 25-28, coolant 17-26, exhaust 34-45; diesel brake
 * 34-38, coolant 16-35, exhaust 22-35. The defaults here lie at the low edge for coolant: those engines are older. As nine of ten
 * engines these ranges would be standard deviations of 13 and, divided chambers among them, 24 % (derived).
 *
 * <p>The torque curve is a parabola: {@code torque/rated torque = r - (r - 1)((u - u_p)/(1 - u_p))^2}, u speed over rated
 * speed, peak ratio r at u_p, never below 0.3; a modelling choice that only sets the load share, which sets the mixture.
 */
public enum EngineClass {
    /** Spark ignition, naturally aspirated. */
    PETROL_NATURAL(0.385, 0.176, 0.12, 0.015, 0.30, 0.45, 0.0, 1.0, 0.0, 1.15, 0.65),
    /** Spark ignition, turbocharged. */
    PETROL_TURBO(0.375, 0.174, 0.15, 0.018, 0.30, 0.45, 0.006, 1.1, 70.0, 1.30, 0.55),
    /** Spark ignition with iron heads, before about 1980. */
    PETROL_OLD(0.36, 0.198, 0.15, 0.015, 0.35, 0.45, 0.0, 1.0, 0.0, 1.25, 0.55),
    /** Turbocharged diesel. */
    DIESEL_TURBO(0.44, 0.161, 0.22, 0.018, 0.30, 0.45, 0.003, 1.1, 70.0, 1.40, 0.50),
    /** Rotary piston, petrol; displacement is that of the equivalent four-stroke. */
    ROTARY(0.31, 0.199, 0.20, 0.06, 0.30, 0.45, 0.0, 1.0, 0.0, 1.08, 0.75);

    private final double grossEfficiency;
    private final double wallShare;
    private final double wallShareSigma;
    private final double oilShare;
    private final double frictionToCoolant;
    private final double frictionToOil;
    private final double turbineHousingShare;
    private final double boostFriction;
    private final double chargeCoolerDropK;
    private final double peakTorqueRatio;
    private final double peakTorqueSpeedShare;

    EngineClass(
            double etaG,
            double phiG,
            double sigmaPhiG,
            double phiO,
            double psiC,
            double psiO,
            double tX,
            double kT,
            double coolerK,
            double torqueRatio,
            double torqueSpeed) {
        grossEfficiency = etaG;
        wallShare = phiG;
        wallShareSigma = sigmaPhiG;
        oilShare = phiO;
        frictionToCoolant = psiC;
        frictionToOil = psiO;
        turbineHousingShare = tX;
        boostFriction = kT;
        chargeCoolerDropK = coolerK;
        peakTorqueRatio = torqueRatio;
        peakTorqueSpeedShare = torqueSpeed;
    }

    /** @return gross indicated efficiency on released heat, eta_g [-] */
    public double grossEfficiency() {
        return grossEfficiency;
    }

    /** @return share of released heat through the chamber walls to the coolant at rated power, phi_g [-] */
    public double wallShare() {
        return wallShare;
    }

    /** @return one standard deviation of {@link #wallShare()}, as a share of it [-] */
    public double wallShareSigma() {
        return wallShareSigma;
    }

    /** @return share of released heat to the oil, phi_o [-] */
    public double oilShare() {
        return oilShare;
    }

    /** @return share of friction power that ends in the coolant, psi_c [-] */
    public double frictionToCoolant() {
        return frictionToCoolant;
    }

    /** @return share of friction power that ends in the oil, psi_o [-] */
    public double frictionToOil() {
        return frictionToOil;
    }

    /** @return share of released heat to the coolant of the turbine housing, t_x [-] */
    public double turbineHousingShare() {
        return turbineHousingShare;
    }

    /** @return factor on friction with a turbocharger, k_t [-] */
    public double boostFriction() {
        return boostFriction;
    }

    /** @return temperature drop of the charge in its cooler at full load [K], 0 without a turbocharger; guessed */
    public double chargeCoolerDropK() {
        return chargeCoolerDropK;
    }

    /** @return whether it ignites by compression */
    public boolean isDiesel() {
        return this == DIESEL_TURBO;
    }

    /**
     * @param speedShare engine speed over rated speed, at least 0 [-]
     * @return torque at full throttle over that at rated speed [-], at least 0.3; 1 at rated speed
     */
    public double torqueShare(double speedShare) {
        double off = (speedShare - peakTorqueSpeedShare) / (1 - peakTorqueSpeedShare);
        return Math.max(0.3, peakTorqueRatio - (peakTorqueRatio - 1) * off * off);
    }

    /** @return speed over rated speed, at most 1, at which full throttle gives the most power: the curve's maximum, derived [-] */
    public double strongestSpeedShare() {
        double width = 1 - peakTorqueSpeedShare;
        double bend = (peakTorqueRatio - 1) / (width * width);
        double root = Math.sqrt(peakTorqueSpeedShare * peakTorqueSpeedShare + 3 * peakTorqueRatio / bend);
        return Math.min(1, (2 * peakTorqueSpeedShare + root) / 3);
    }
}

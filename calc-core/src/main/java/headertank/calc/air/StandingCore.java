package headertank.calc.air;

import headertank.calc.choice.AirExit;
import headertank.calc.fluid.Air;
import headertank.calc.quantity.Physics;
import org.hipparchus.util.FastMath;

/**
 * What a hot core loses in still air, with no fan turning: off its two faces, off hoses and tanks, and by the draught of its own
 * warmth through it. Taken with the core at 88, the day at 28 and the air behind the core at 58 deg C (a logged car's intake air
 * had 53 to 68), and not varied with them: films go with the difference to the power of a quarter.
 *
 * <p>Faces: free convection off an upright plate, {@code Nu = (0.825 + 0.387 Ra^(1/6)/(1 + (0.492/Pr)^(9/16))^(8/27))^2} (S. W.
 * Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1323, from memory), and radiation, for which a finned face is
 * nearly black, 0.9. The rear face has the warm air and the engine before it, so it counts half (derived). Hoses and tanks: 0.25
 * m2 in warm air at the same films, half (modelling choice).
 *
 * <p>Draught: air behind the core is lighter by d than that before it. With a vent in the hood the warm space is a chimney of 0.5 m
 * (modelling choice) and draws {@code d g 0.5 m} through the core. Where the hood is shut and the air can only leave low, the
 * core itself is the upper opening: its upper half blows and its lower half draws, each by {@code d g H/4} on average, and what
 * blows has been warmed before (derived). Through the core's viscous resistance that is some 0.005 to 0.04 m/s. Wind is left out: by
 * the fit of the logged car 0.3 m/s of it through the grille would double what its core loses.
 */
public final class StandingCore {

    private static final double CORE_K = Physics.kelvin(88);
    private static final double DAY_K = Physics.kelvin(28);
    private static final double BEHIND_K = Physics.kelvin(58);
    private static final double EMISSIVITY = 0.9;
    private static final double HOSES_AND_TANKS_M2 = 0.25;
    private static final double CHIMNEY_M = 0.5;
    private static final double HALF = (CORE_K - BEHIND_K) / (CORE_K - DAY_K);

    private StandingCore() {}

    /**
     * @param widthM width of the face [m]
     * @param heightM height of the face [m]
     * @param openShare share of the face that is not blocked [-]
     * @param drop pressure drop of the core
     * @param exit where the air behind it leaves
     * @param pressurePa pressure of the air [Pa]
     * @return conductance from the core to the ambient air [W/K]
     */
    public static double conductanceWPerK(
            double widthM, double heightM, double openShare, CoreDropCurve drop, AirExit exit, double pressurePa) {
        double film = filmWPerM2K(heightM, pressurePa);
        double face = widthM * heightM;
        double still = film * ((1 + HALF) * face + HALF * HOSES_AND_TANKS_M2);
        double cold = Air.densityKgPerM3(pressurePa, DAY_K, 0);
        double lighterPaPerM = (cold - Air.densityKgPerM3(pressurePa, BEHIND_K, 0)) * Physics.GRAVITY_M_PER_S2;
        boolean chimney = exit == AirExit.HOOD_VENT;
        double speed = drop.velocityMPerS(lighterPaPerM * (chimney ? CHIMNEY_M : heightM / 4));
        double warmed = chimney ? 1 : 0.5 + 0.5 * HALF;
        return still + warmed * cold * Air.heatCapacityJPerKgK(DAY_K) * speed * openShare * face;
    }

    /** Free convection and radiation of one face [W/m2K]. */
    static double filmWPerM2K(double heightM, double pressurePa) {
        double mean = 0.5 * (CORE_K + DAY_K);
        double density = Air.densityKgPerM3(pressurePa, mean, 0);
        double viscosity = Air.viscosityPaS(mean);
        double conductivity = Air.conductivityWPerMK(mean);
        double prandtl = viscosity * Air.heatCapacityJPerKgK(mean) / conductivity;
        double kinematic = viscosity / density;
        double rayleigh = Physics.GRAVITY_M_PER_S2
                / mean
                * (CORE_K - DAY_K)
                * heightM
                * heightM
                * heightM
                / (kinematic * kinematic)
                * prandtl;
        double root = 0.825
                + 0.387
                        * FastMath.pow(rayleigh, 1.0 / 6)
                        / FastMath.pow(1 + FastMath.pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
        double radiation = EMISSIVITY * Physics.STEFAN_BOLTZMANN * (CORE_K * CORE_K + DAY_K * DAY_K) * (CORE_K + DAY_K);
        return root * root * conductivity / heightM + radiation;
    }
}

package headertank.calc.radiator;

import headertank.calc.quantity.TubeRegime;
import org.hipparchus.util.FastMath;

/**
 * Heat transfer and friction inside flat tubes, continuous over laminar, transition and turbulent flow; Re and Nu on the
 * hydraulic diameter.
 *
 * <p>Laminar (Re to 2300), a = short over long side: Nu_T = 7.541 (1 - 2.610 a + 4.970 a^2 - 5.119 a^3 + 2.702 a^4 - 0.548
 * a^5) at uniform wall temperature, and four times the Fanning f Re = 24 (1 - 1.3553 a + 1.9467 a^2 - 1.7012 a^3 + 0.9564
 * a^4 - 0.2537 a^5) over Re as Darcy friction (R. K. Shah, A. L. London, Laminar Flow Forced Convection in Ducts, 1978,
 * from memory); to the Nusselt number is added an entry term in Gz = Re Pr D/L, see {@link #entryTerm(double)}.
 *
 * <p>Turbulent (Re from 4000): V. Gnielinski, Int. Chem. Eng. 16 (1976) 359-368 with the friction of B. S. Petukhov, Adv.
 * Heat Transfer 6 (1970) 503-564: f = (0.79 ln Re - 1.64)^-2, Nu = (f/8)(Re - 1000) Pr/(1 + 12.7 sqrt(f/8) (Pr^(2/3) - 1))
 * times (1 + (D/L)^(2/3)). Between them linear in Re (idea of Gnielinski 2013, from memory). Dimpled or turbulated tubes:
 * limits 1000 and 2500, friction 1.5 times (guessed, 25 %).
 */
public final class TubeFlow {

    private final double laminarNusselt;
    private final double laminarFRe;
    private final double diameterOverLength;
    private final double entryFactor;
    private final double laminarToRe;
    private final double turbulentFromRe;
    private final double frictionFactor;
    private final double frictionLow;
    private final double frictionHigh;

    /**
     * @param aspect short over long side of the tube's inside, 0..1 [-]
     * @param diameterOverLength hydraulic diameter over length of one pass, D/L [-]
     * @param turbulated whether the tubes are dimpled or carry turbulators
     */
    public TubeFlow(double aspect, double diameterOverLength, boolean turbulated) {
        this.laminarNusselt = laminarNusselt(aspect);
        this.laminarFRe = laminarFRe(aspect);
        this.diameterOverLength = diameterOverLength;
        double third = FastMath.cbrt(diameterOverLength);
        this.entryFactor = 1 + third * third;
        this.laminarToRe = turbulated ? 1000 : 2300;
        this.turbulentFromRe = turbulated ? 2500 : 4000;
        this.frictionFactor = turbulated ? 1.5 : 1.0;
        this.frictionLow = 4 * laminarFRe / laminarToRe;
        this.frictionHigh = petukhov(turbulentFromRe);
    }

    /** @return Nusselt number of fully developed laminar flow at uniform wall temperature [-] */
    public static double laminarNusselt(double a) {
        return 7.541 * (1 + a * (-2.610 + a * (4.970 + a * (-5.119 + a * (2.702 - 0.548 * a)))));
    }

    /** @return Fanning friction factor times Re of fully developed laminar flow [-] */
    public static double laminarFRe(double a) {
        return 24 * (1 + a * (-1.3553 + a * (1.9467 + a * (-1.7012 + a * (0.9564 - 0.2537 * a)))));
    }

    /** @return Darcy friction factor of turbulent flow in smooth tubes, Re from 3000 [-] */
    public static double petukhov(double reynolds) {
        double d = 0.79 * FastMath.log(reynolds) - 1.64;
        return 1 / (d * d);
    }

    /** @return Nusselt number of turbulent flow, no entry or property correction, Re from 3000, Pr from 0.5 [-] */
    public static double gnielinski(double reynolds, double prandtl) {
        return gnielinski(petukhov(reynolds), reynolds, prandtl);
    }

    private static double gnielinski(double friction, double reynolds, double prandtl) {
        double eighth = friction / 8;
        double third = FastMath.cbrt(prandtl);
        return eighth * (reynolds - 1000) * prandtl / (1 + 12.7 * FastMath.sqrt(eighth) * (third * third - 1));
    }

    /** @return 0.03 Gz/(1 + 0.016 Gz^(2/3)), mean gain over the length by the thermal entry between two plates [-] */
    static double entryTerm(double graetz) {
        double third = FastMath.cbrt(graetz);
        return 0.03 * graetz / (1 + 0.016 * third * third);
    }

    /**
     * @param reynolds Reynolds number, at least 0 [-]
     * @param prandtl Prandtl number [-]
     * @return mean Nusselt number [-]
     */
    public double nusselt(double reynolds, double prandtl) {
        if (reynolds <= laminarToRe) {
            return laminar(reynolds, prandtl);
        }
        if (reynolds >= turbulentFromRe) {
            return entryFactor * gnielinski(reynolds, prandtl);
        }
        double share = (reynolds - laminarToRe) / (turbulentFromRe - laminarToRe);
        return (1 - share) * laminar(laminarToRe, prandtl)
                + share * entryFactor * gnielinski(frictionHigh, turbulentFromRe, prandtl);
    }

    private double laminar(double reynolds, double prandtl) {
        return laminarNusselt + entryTerm(reynolds * prandtl * diameterOverLength);
    }

    /**
     * @param reynolds Reynolds number, above 0 [-]
     * @return Darcy friction factor [-]
     */
    public double friction(double reynolds) {
        double smooth;
        if (reynolds <= laminarToRe) {
            smooth = 4 * laminarFRe / reynolds;
        } else if (reynolds >= turbulentFromRe) {
            smooth = petukhov(reynolds);
        } else {
            double share = (reynolds - laminarToRe) / (turbulentFromRe - laminarToRe);
            smooth = (1 - share) * frictionLow + share * frictionHigh;
        }
        return frictionFactor * smooth;
    }

    /** @return how the coolant flows at this Reynolds number */
    public TubeRegime regime(double reynolds) {
        if (reynolds <= laminarToRe) {
            return TubeRegime.LAMINAR;
        }
        return reynolds >= turbulentFromRe ? TubeRegime.TURBULENT : TubeRegime.TRANSITION;
    }
}

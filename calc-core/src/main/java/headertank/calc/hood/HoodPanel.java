package headertank.calc.hood;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;

/**
 * Steady heat through a hood's panel: Q = A (T_in - T_out) / (1/h_i + t/k + 1/h_o).
 *
 * <p>h_i, h_o: forced convection of {@link AirFilm} plus radiation eps sigma (T1^2 + T2^2)(T1 + T2) between the panel's face
 * and air or surroundings of the air's temperature, eps 0.9 (modelling choice). The faces' temperatures come from the same
 * series of resistances, by a fixed number of turns. Derived.
 *
 * @param heatW Q, outwards [W]
 * @param insideWPerM2K h_i [W/m2K]
 * @param outsideWPerM2K h_o [W/m2K]
 * @param panelM2KPerW t/k [m2K/W]
 * @param innerFaceK temperature of the inner face [K]
 * @param outerFaceK temperature of the outer face [K]
 */
public record HoodPanel(
        double heatW,
        double insideWPerM2K,
        double outsideWPerM2K,
        double panelM2KPerW,
        double innerFaceK,
        double outerFaceK) {

    /** Emissivity of a painted or bare laminate face [-]; modelling choice. */
    public static final double EMISSIVITY = 0.9;

    private static final int TURNS = 30;

    /**
     * The panel itself.
     *
     * @param material what it is made of
     * @param thicknessM t, 0 to 20 mm, outside: typed error [m]
     * @param areaM2 A, above 0 to 5, outside: typed error [m2]
     * @param lengthM length along the air, 0.1 to 3, outside: typed error [m]
     */
    public record Panel(HoodMaterial material, double thicknessM, double areaM2, double lengthM) {
        public Panel {
            OutOfRangeException.require("hood.thicknessM", thicknessM, Range.of(0, 0.02));
            OutOfRangeException.require("hood.areaM2", areaM2, Range.of(0.01, 5));
            OutOfRangeException.require("hood.lengthM", lengthM, Range.of(0.1, 3));
        }

        /** @return t/k [m2K/W] */
        public double resistanceM2KPerW() {
            return thicknessM / material.conductivityWPerMK();
        }
    }

    /**
     * The air on one side.
     *
     * @param airK temperature, 200 to 500, outside: typed error [K]
     * @param velocityMPerS velocity along the panel [m/s]
     */
    public record Side(double airK, double velocityMPerS) {
        public Side {
            OutOfRangeException.require("hood.airK", airK, Range.of(200, 500));
        }
    }

    /**
     * @param panel the panel
     * @param inside air under the hood
     * @param outside air over it
     * @param film air properties at about the mean of both temperatures
     * @return heat flow and what it is made of
     */
    public static HoodPanel of(Panel panel, Side inside, Side outside, AirFilm film) {
        double convectionIn = film.coefficientWPerM2K(inside.velocityMPerS(), panel.lengthM());
        double convectionOut = film.coefficientWPerM2K(outside.velocityMPerS(), panel.lengthM());
        double resistance = panel.resistanceM2KPerW();
        double innerFace = 0.5 * (inside.airK() + outside.airK());
        double outerFace = innerFace;
        double in = 0;
        double out = 0;
        double flux = 0;
        for (int turn = 0; turn < TURNS; turn++) {
            in = convectionIn + radiationWPerM2K(inside.airK(), innerFace);
            out = convectionOut + radiationWPerM2K(outside.airK(), outerFace);
            flux = (inside.airK() - outside.airK()) / (1 / in + resistance + 1 / out);
            innerFace = inside.airK() - flux / in;
            outerFace = outside.airK() + flux / out;
        }
        return new HoodPanel(panel.areaM2() * flux, in, out, resistance, innerFace, outerFace);
    }

    /** @return eps sigma (T1^2 + T2^2)(T1 + T2) between two grey faces or air and a face [W/m2K] */
    public static double radiationWPerM2K(double firstK, double secondK) {
        return EMISSIVITY * Physics.STEFAN_BOLTZMANN * (firstK * firstK + secondK * secondK) * (firstK + secondK);
    }

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        String film = "flat plate, from memory (Incropera and DeWitt), and radiation";
        return List.of(
                new WorkingLine(WorkedQuantity.FILM_UNDER_THE_HOOD, "h_i", "W/m2K", insideWPerM2K, film),
                new WorkingLine(WorkedQuantity.FILM_OVER_THE_HOOD, "h_o", "W/m2K", outsideWPerM2K, film),
                new WorkingLine(WorkedQuantity.RESISTANCE_OF_THE_PANEL, "t/k", "m2K/W", panelM2KPerW, "derived"),
                new WorkingLine(
                        WorkedQuantity.HEAT_THROUGH_THE_PANEL, "q", "W", heatW, "series of resistances, derived"));
    }
}

package headertank.calc.transients;

import headertank.calc.carspec.BuildField;
import headertank.calc.fluid.Air;
import headertank.calc.hood.AirFilm;
import headertank.calc.hood.HoodMaterial;
import headertank.calc.hood.HoodPanel;
import headertank.calc.quantity.Range;
import headertank.calc.rating.Plant;

/**
 * Heat through the hood against the temperature of the air under it, at one road speed: {@link HoodPanel} at a few
 * temperatures, straight between them. Panel of 1.2 m2 and 1.2 m, air under it at 2 m/s with the engine running, else
 * 0.5 m/s, over it never below 0.5 m/s (modelling choices).
 */
final class HoodLoss {

    private static final double AREA_M2 = 1.2;
    private static final double LENGTH_M = 1.2;
    private static final double STILL_M_PER_S = 0.5;
    private static final double BAY_M_PER_S = 2;
    private static final double[] ABOVE_K = {0.1, 20, 40, 70, 110};
    private static final Range FILM_K = Range.of(230, 480);

    private final double ambientK;
    private final double[] conductance = new double[ABOVE_K.length];
    private final double[] inner = new double[ABOVE_K.length];
    private final double[] outer = new double[ABOVE_K.length];

    HoodLoss(Plant plant, double ambientK, double roadSpeedMPerS, boolean engineOn) {
        this.ambientK = ambientK;
        HoodPanel.Panel panel = new HoodPanel.Panel(
                plant.resolved().option(BuildField.HOOD_MATERIAL, HoodMaterial.class),
                plant.resolved().value(BuildField.HOOD_THICKNESS),
                AREA_M2,
                LENGTH_M);
        HoodPanel.Side over = new HoodPanel.Side(ambientK, Math.max(STILL_M_PER_S, roadSpeedMPerS));
        for (int i = 0; i < ABOVE_K.length; i++) {
            double under = ambientK + ABOVE_K[i];
            double mean = FILM_K.clamp(0.5 * (under + ambientK));
            double viscosity = Air.viscosityPaS(mean);
            double conductivity = Air.conductivityWPerMK(mean);
            AirFilm film = new AirFilm(
                    viscosity / Air.densityKgPerM3(plant.atmospherePa(), mean, 0),
                    conductivity,
                    viscosity * Air.heatCapacityJPerKgK(mean) / conductivity);
            HoodPanel q =
                    HoodPanel.of(panel, new HoodPanel.Side(under, engineOn ? BAY_M_PER_S : STILL_M_PER_S), over, film);
            conductance[i] = q.heatW() / ABOVE_K[i];
            inner[i] = (q.innerFaceK() - ambientK) / ABOVE_K[i];
            outer[i] = (q.outerFaceK() - ambientK) / ABOVE_K[i];
        }
    }

    /** @return conductance from the air under the hood to that over it [W/K] */
    double conductanceWPerK(double underK) {
        return at(conductance, underK);
    }

    /** @return temperature of the panel's inner face [K] */
    double innerK(double underK) {
        return ambientK + (underK - ambientK) * at(inner, underK);
    }

    /** @return temperature of the panel's outer face, where a hand touches it [K] */
    double outerK(double underK) {
        return ambientK + (underK - ambientK) * at(outer, underK);
    }

    private double at(double[] values, double underK) {
        double above = underK - ambientK;
        int i = 1;
        while (i < ABOVE_K.length - 1 && above > ABOVE_K[i]) {
            i++;
        }
        double w = Math.max(0, Math.min(1, (above - ABOVE_K[i - 1]) / (ABOVE_K[i] - ABOVE_K[i - 1])));
        return values[i - 1] + w * (values[i] - values[i - 1]);
    }
}

package headertank.calc.hood;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Figures: independent prototype of the same equations. 0.1 kg of water on 0.01 m2, from 20 to 50 deg C. */
class WaterOnPanelTest {

    private static final WaterOnPanel OVER_AIR = new WaterOnPanel(0.1, 0.01, 500, 10, 298.15, 20, 363.15);
    private static final WaterOnPanel ON_PLATE = new WaterOnPanel(0.1, 0.01, 500, 10, 298.15, 3000, 363.15);

    @Test
    void lumped() {
        assertLumped(HoodMaterial.STEEL, 0.8e-3, 55.3);
        assertLumped(HoodMaterial.ALUMINIUM, 1.0e-3, 55.0);
        assertLumped(HoodMaterial.CARBON, 1.5e-3, 105.9);
        assertLumped(HoodMaterial.GLASS_FIBRE, 2.5e-3, 256.3);
    }

    /** The same by stepping m c T' = U A (T_b - T) - g A (T - T_r) in small steps, and without a loss in closed form. */
    @Test
    void lumpedIsTheSolutionOfItsEquation() {
        double u = 1 / (1.0 / 3000 + 1.5e-3 / 0.7 + 1.0 / 500);
        double t = 293.15;
        double seconds = 0;
        double dt = 1e-3;
        while (t < 323.15) {
            t += dt * (u * 0.01 * (363.15 - t) - 10 * 0.01 * (t - 298.15)) / (0.1 * 4182);
            seconds += dt;
        }
        assertThat(ON_PLATE.lumpedS(1.5e-3 / 0.7, 293.15, 323.15)).isCloseTo(seconds, Percentage.withPercentage(0.01));
        WaterOnPanel kept = new WaterOnPanel(0.1, 0.01, 500, 0, 298.15, 3000, 363.15);
        double tau = 0.1 * 4182 / (u * 0.01);
        assertThat(kept.lumpedS(1.5e-3 / 0.7, 293.15, 323.15))
                .isCloseTo(tau * Math.log(70.0 / 40.0), Percentage.withPercentage(1e-9));
    }

    @Test
    void withThePanelsMassOnAPlate() {
        assertLayered(ON_PLATE, HoodMaterial.STEEL, 0.8e-3, 56.2);
        assertLayered(ON_PLATE, HoodMaterial.ALUMINIUM, 1.0e-3, 55.8);
        assertLayered(ON_PLATE, HoodMaterial.CARBON, 1.5e-3, 108.6);
        assertLayered(ON_PLATE, HoodMaterial.GLASS_FIBRE, 2.5e-3, 274.3);
    }

    @Test
    void withThePanelsMassOverAir() {
        assertLayered(OVER_AIR, HoodMaterial.STEEL, 0.8e-3, 1513);
        assertLayered(OVER_AIR, HoodMaterial.ALUMINIUM, 1.0e-3, 1495);
        assertLayered(OVER_AIR, HoodMaterial.CARBON, 1.5e-3, 1564);
        assertLayered(OVER_AIR, HoodMaterial.GLASS_FIBRE, 2.5e-3, 1889);
    }

    @Test
    void masslessLayersAreTheLumpedCase() {
        for (HoodMaterial material : HoodMaterial.values()) {
            double lumped = ON_PLATE.lumpedS(2e-3 / material.conductivityWPerMK(), 293.15, 323.15);
            assertThat(ON_PLATE.layeredS(material, 2e-3, 1e-6, 293.15, 323.15))
                    .as("%s", material)
                    .isCloseTo(lumped, Percentage.withPercentage(0.1));
        }
    }

    @Test
    void neverGetsWarmerThanItsBalance() {
        assertThat(OVER_AIR.lumpedS(0, 293.15, 360)).isInfinite();
        assertThat(OVER_AIR.layeredS(HoodMaterial.STEEL, 1e-3, 1, 293.15, 360)).isInfinite();
    }

    private static void assertLumped(HoodMaterial material, double thicknessM, double seconds) {
        assertThat(ON_PLATE.lumpedS(thicknessM / material.conductivityWPerMK(), 293.15, 323.15))
                .as("%s", material)
                .isCloseTo(seconds, Percentage.withPercentage(0.5));
    }

    private static void assertLayered(WaterOnPanel test, HoodMaterial material, double thicknessM, double seconds) {
        assertThat(test.layeredS(material, thicknessM, 1, 293.15, 323.15))
                .as("%s", material)
                .isCloseTo(seconds, Percentage.withPercentage(0.5));
    }
}

package headertank.calc.hood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class HoodPanelTest {

    /** Dry air at 55 deg C and 101325 Pa: US Standard Atmosphere 1976 formulas, from memory. */
    private static final AirFilm AIR = new AirFilm(1.8373e-5, 0.028409, 0.7005);

    private static final HoodPanel.Side BAY = new HoodPanel.Side(353.15, 2);
    private static final HoodPanel.Side PARKED = new HoodPanel.Side(303.15, 0.5);
    private static final HoodPanel.Side MOVING = new HoodPanel.Side(303.15, 30);

    /** Source: independent prototype of the same equations, whose plate length is not stated: 0.8 m fits all eight. */
    @Test
    void materialsSideBySide() {
        assertHeat(HoodMaterial.STEEL, 0.8e-3, 348, 686);
        assertHeat(HoodMaterial.ALUMINIUM, 1.0e-3, 348, 686);
        assertHeat(HoodMaterial.CARBON, 1.5e-3, 343, 670);
        assertHeat(HoodMaterial.GLASS_FIBRE, 2.5e-3, 332, 628);
    }

    @Test
    void filmsDominate() {
        HoodPanel steel = panel(HoodMaterial.STEEL, 0.8e-3, MOVING);
        HoodPanel glass = panel(HoodMaterial.GLASS_FIBRE, 2.5e-3, MOVING);

        assertThat(steel.heatW() - glass.heatW()).isBetween(40.0, 60.0);
    }

    @Test
    void noThicknessNoMaterial() {
        double none = panel(HoodMaterial.STEEL, 0, PARKED).heatW();

        assertThat(panel(HoodMaterial.GLASS_FIBRE, 0, PARKED).heatW()).isEqualTo(none);
        assertThat(panel(HoodMaterial.GLASS_FIBRE, 1e-9, PARKED).heatW()).isCloseTo(none, within(1e-3));
    }

    @Test
    void resistancesAreInSeries() {
        for (HoodMaterial material : HoodMaterial.values()) {
            HoodPanel p = panel(material, 3e-3, MOVING);
            double flux = p.heatW() / 1.2;

            assertThat(p.insideWPerM2K() * (353.15 - p.innerFaceK())).isCloseTo(flux, within(1e-6));
            assertThat(p.outsideWPerM2K() * (p.outerFaceK() - 303.15)).isCloseTo(flux, within(1e-6));
            assertThat((p.innerFaceK() - p.outerFaceK()) / p.panelM2KPerW()).isCloseTo(flux, within(1e-6 * flux));
        }
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> new HoodPanel.Panel(HoodMaterial.STEEL, -1e-3, 1.2, 0.8))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> AIR.coefficientWPerM2K(-1, 1)).isInstanceOf(OutOfRangeException.class);
    }

    private static void assertHeat(HoodMaterial material, double thicknessM, double parkedW, double movingW) {
        assertThat(panel(material, thicknessM, PARKED).heatW())
                .as("%s parked", material)
                .isCloseTo(parkedW, Percentage.withPercentage(0.5));
        assertThat(panel(material, thicknessM, MOVING).heatW())
                .as("%s moving", material)
                .isCloseTo(movingW, Percentage.withPercentage(0.5));
    }

    private static HoodPanel panel(HoodMaterial material, double thicknessM, HoodPanel.Side outside) {
        return HoodPanel.of(new HoodPanel.Panel(material, thicknessM, 1.2, 0.8), BAY, outside, AIR);
    }
}

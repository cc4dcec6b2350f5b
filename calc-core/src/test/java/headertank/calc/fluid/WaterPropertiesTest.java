package headertank.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import headertank.calc.quantity.OutOfRangeException;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterPropertiesTest {

    /** Independent prototype of the same equations. */
    @ParameterizedTest
    @CsvSource({
        "25, 997.06, 4181.4, 8.899e-4, 0.6064",
        "90, 965.33, 4204.8, 3.142e-4, 0.6727",
        "120, 943.14, 4246.2, 2.320e-4, 0.6823"
    })
    void liquid(double celsius, double rho, double cp, double mu, double k) {
        double t = celsius + 273.15;
        assertThat(WaterCoolant.WATER.densityKgPerM3(t)).isCloseTo(rho, withPercentage(0.1));
        assertThat(WaterCoolant.WATER.heatCapacityJPerKgK(t)).isCloseTo(cp, withPercentage(0.1));
        assertThat(WaterCoolant.WATER.viscosityPaS(t)).isCloseTo(mu, withPercentage(0.1));
        assertThat(WaterCoolant.WATER.conductivityWPerMK(t)).isCloseTo(k, withPercentage(0.1));
    }

    @Test
    void wholeTableOfTheLiquid() {
        int compared = 0;
        for (Figures.Row r : Figures.read(getClass(), "water-liquid.csv")) {
            if (!r.text("origin").equals("computed")) {
                continue;
            }
            double t = r.number("temperature_K");
            assertThat(WaterCoolant.WATER.densityKgPerM3(t)).isCloseTo(r.number("density_kg_m3"), withPercentage(0.02));
            assertThat(WaterCoolant.WATER.heatCapacityJPerKgK(t))
                    .isCloseTo(r.number("specific_heat_J_kgK"), withPercentage(0.1));
            assertThat(WaterCoolant.WATER.viscosityPaS(t)).isCloseTo(r.number("viscosity_Pas"), withPercentage(0.5));
            assertThat(WaterCoolant.WATER.conductivityWPerMK(t))
                    .isCloseTo(r.number("conductivity_W_mK"), withPercentage(0.2));
            compared++;
        }
        assertThat(compared).isEqualTo(69);
    }

    @Test
    void wholeTableOfTheSaturationLine() {
        int compared = 0;
        for (Figures.Row r : Figures.read(getClass(), "water-saturation.csv")) {
            if (r.text("origin").equals("computed")) {
                assertThat(WaterCoolant.WATER.vapourPressurePa(r.number("temperature_K")))
                        .isCloseTo(r.number("saturation_pressure_Pa"), withPercentage(1e-4));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(31);
    }

    @Test
    void saturationLineReturnsToItself() {
        long seed = 20250101L;
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            double t = 273.2 + 373 * random.nextDouble();
            assertThat(WaterProperties.saturationTemperatureK(WaterCoolant.WATER.vapourPressurePa(t)))
                    .as("seed %d, %s K", seed, t)
                    .isCloseTo(t, within(1e-6));
        }
    }

    @Test
    void refusesWhatItDoesNotCover() {
        assertThatThrownBy(() -> WaterProperties.saturationTemperatureK(100)).isInstanceOf(OutOfRangeException.class);
    }
}

package headertank.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures: independent prototype of the same equations, printed to three or four digits. */
class FuelTest {

    @ParameterizedTest
    @CsvSource({
        "PETROL_E10, 1.000, 30.7, 9.8",
        "E85, 0.956, 92.7, 28.6",
        "ETHANOL, 0.947, 110.8, 34.2",
        "METHANOL, 0.869, 206.9, 58.6"
    })
    void coolantFactorAndChargeCooling(Fuel fuel, double factor, double coolingK, double latentKJPerMJ) {
        assertThat(fuel.coolantFactor()).isCloseTo(factor, within(5e-4));
        assertThat(fuel.chargeCoolingK()).isCloseTo(coolingK, within(0.06));
        assertThat(1e3 * fuel.latentHeatJPerKg() / fuel.lowerHeatingValueJPerKg())
                .isCloseTo(latentKJPerMJ, within(0.06));
    }

    @Test
    void theReferenceFuelHasFactorOneExactly() {
        assertThat(Fuel.PETROL_E10.coolantFactor()).isEqualTo(1.0);
    }

    @Test
    void moreAlcoholMeansLessHeat() {
        Fuel[] order = {Fuel.PETROL_E0, Fuel.PETROL_E10, Fuel.E85, Fuel.ETHANOL, Fuel.METHANOL};
        for (int i = 1; i < order.length; i++) {
            assertThat(order[i].coolantFactor()).isLessThan(order[i - 1].coolantFactor());
        }
        assertThat(Fuel.PETROL_E0.coolantFactor()).isCloseTo(1.0, within(0.01));
    }
}

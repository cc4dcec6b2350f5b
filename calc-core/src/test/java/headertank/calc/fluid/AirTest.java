package headertank.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import headertank.calc.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;

class AirTest {

    /** Independent prototype of the same equations. */
    @Test
    void prototypeValues() {
        double t = 313.15;
        assertThat(Air.densityKgPerM3(101325, t, 0)).isCloseTo(1.1272, withPercentage(0.1));
        assertThat(Air.heatCapacityJPerKgK(t)).isCloseTo(1006.0, withPercentage(0.1));
        assertThat(Air.viscosityPaS(t)).isCloseTo(1.9076e-5, withPercentage(0.1));
        assertThat(Air.conductivityWPerMK(t)).isCloseTo(0.02727, withPercentage(0.1));
        assertThat(Atmosphere.pressurePa(1500)).isCloseTo(84556, withPercentage(0.01));
        double factor = Air.densityKgPerM3(101325, 308.15, 0.6) / Air.densityKgPerM3(101325, 308.15, 0);
        assertThat(factor).isCloseTo(0.9874, within(1e-4));
    }

    @Test
    void humidAirIsLighterAndColdHumidityHardlyMatters() {
        double last = Double.POSITIVE_INFINITY;
        for (double phi = 0; phi <= 1.0; phi += 0.1) {
            double rho = Air.densityKgPerM3(95000, 305, phi);
            assertThat(rho).isLessThan(last);
            last = rho;
        }
        double t = 233.15;
        assertThat(Air.densityKgPerM3(101325, t, 1)).isCloseTo(Air.densityKgPerM3(101325, t, 0), withPercentage(0.02));
    }

    @Test
    void refusesWhatItDoesNotCover() {
        assertThatThrownBy(() -> Air.viscosityPaS(200)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Air.densityKgPerM3(1000, 300, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Air.densityKgPerM3(1e5, 300, 1.1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Atmosphere.pressurePa(4501)).isInstanceOf(OutOfRangeException.class);
    }
}

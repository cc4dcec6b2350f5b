package headertank.calc.electric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BatteryTest {

    @Test
    void sagsByItsResistanceOnlyWhileItGives() {
        assertThat(Battery.terminalV(12.4, 50)).isCloseTo(11.8, within(1e-12));
        assertThat(Battery.terminalV(13.5, 0)).isEqualTo(13.5);
        assertThat(Battery.terminalV(13.5, -20)).isEqualTo(13.5);
        assertThat(Battery.terminalV(12.4, 5000)).isZero();
    }

    @Test
    void fansSlowDownToWhereTheAlternatorCarriesThem() {
        double factor = ElectricBalance.fanSpeedFactor(36, 40);
        assertThat(40 * factor * factor).isCloseTo(36, within(1e-9));
        assertThat(ElectricBalance.fanSpeedFactor(50, 40)).isOne();
        assertThat(ElectricBalance.fanSpeedFactor(0, 40)).isCloseTo(12.4 / 13.5, within(1e-12));
    }
}

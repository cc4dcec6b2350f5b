package headertank.calc.oil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;

class OilThermostatTest {

    private static final OilSpec FREE = new OilSpec(80, 380, OilThermostat.NONE);
    private static final OilSpec GOVERNED = new OilSpec(80, 380, OilThermostat.usual(0.9));

    @Test
    void opensOverTenKelvin() {
        OilThermostat t = OilThermostat.usual(0.9);
        assertThat(t.openShare(350)).isCloseTo(0.1, within(1e-12));
        assertThat(t.openShare(358.15)).isCloseTo(0.55, within(1e-12));
        assertThat(t.openShare(370)).isOne();
        assertThat(OilThermostat.NONE.openShare(300)).isOne();
    }

    @Test
    void theBalanceHoldsShutThrottledAndOpen() {
        for (double heat = 0; heat <= 60e3; heat += 500) {
            OilBalance b = OilBalance.of(GOVERNED, heat, 355, 303);
            assertThat(b.toCoolantW() + b.toAirW()).as("heat %s", heat).isCloseTo(heat, within(1e-6 * (heat + 1e3)));
        }
    }

    @Test
    void hotOilDoesNotKnowOfItAndColdOilStaysWarmer() {
        assertThat(OilBalance.temperatureK(GOVERNED, 40e3, 370, 303))
                .isEqualTo(OilBalance.temperatureK(FREE, 40e3, 370, 303));
        assertThat(OilBalance.temperatureK(GOVERNED, 2e3, 355, 303))
                .isGreaterThan(OilBalance.temperatureK(FREE, 2e3, 355, 303) + 5);
    }

    @Test
    void figuresOfNoThermostatAreRefused() {
        assertThatThrownBy(() -> new OilThermostat(353, 353.5, 0.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new OilThermostat(353, 363, 1.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new OilSpec(80, 25, null)).isInstanceOf(IllegalArgumentException.class);
    }
}

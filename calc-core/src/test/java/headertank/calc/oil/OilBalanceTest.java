package headertank.calc.oil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OilBalanceTest {

    private static final OilSpec V8_AT_42 = new OilSpec(80, 380 * 1.28, OilThermostat.NONE);
    private static final OilSpec V8_AT_22 = new OilSpec(80, 380 * (0.3 + 0.7 * 22 / 30), OilThermostat.NONE);

    /** Source: independent prototype of the same equations; 46.3 and 41.6 kW are the heats that belong to its results. */
    @Test
    void bigEngineOnTrackAndAtAnAngle() {
        assertThat(celsius(V8_AT_42, 46.3e3, 110.2)).isCloseTo(123, within(0.5));
        assertThat(celsius(V8_AT_22, 41.6e3, 137.3)).isCloseTo(159, within(0.5));
    }

    @Test
    void heatGoesNowhereElse() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 1000; i++) {
            double heat = 8e4 * random.nextDouble();
            OilBalance b = OilBalance.of(
                    new OilSpec(1 + 300 * random.nextDouble(), 400 * random.nextDouble(), OilThermostat.NONE),
                    heat,
                    300 + 120 * random.nextDouble(),
                    250 + 60 * random.nextDouble());
            assertThat(b.toCoolantW() + b.toAirW()).as("seed 7, case %s", i).isCloseTo(heat, within(1e-6));
        }
    }

    @Test
    void limits() {
        assertThat(OilBalance.standing(Physics.kelvin(129))).isEqualTo(OilBalance.Standing.GO);
        assertThat(OilBalance.standing(Physics.kelvin(131))).isEqualTo(OilBalance.Standing.CAUTION);
        assertThat(OilBalance.standing(Physics.kelvin(151))).isEqualTo(OilBalance.Standing.NO_GO);
        assertThatThrownBy(() -> celsius(V8_AT_22, -1, 90)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> celsius(V8_AT_22, Double.NaN, 90)).isInstanceOf(OutOfRangeException.class);
    }

    private static double celsius(OilSpec spec, double heatW, double coolantC) {
        return Physics.celsius(OilBalance.of(spec, heatW, Physics.kelvin(coolantC), Physics.kelvin(30))
                .oilK());
    }
}

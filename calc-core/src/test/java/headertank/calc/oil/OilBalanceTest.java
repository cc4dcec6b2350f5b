package headertank.calc.oil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OilBalanceTest {

    private static final OilSpec V8 = new OilSpec(80, 380);

    /** Source: independent prototype of the same equations; 46.3 and 41.6 kW are the heats that belong to its results. */
    @Test
    void bigEngineOnTrackAndAtAnAngle() {
        assertThat(celsius(46.3e3, 110.2, 42)).isCloseTo(123, within(0.5));
        assertThat(celsius(41.6e3, 137.3, 22)).isCloseTo(159, within(0.5));
    }

    @Test
    void heatGoesNowhereElse() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 1000; i++) {
            double heat = 8e4 * random.nextDouble();
            OilBalance b = OilBalance.of(
                    new OilSpec(1 + 300 * random.nextDouble(), 400 * random.nextDouble()),
                    heat,
                    300 + 120 * random.nextDouble(),
                    250 + 60 * random.nextDouble(),
                    60 * random.nextDouble());
            assertThat(b.toCoolantW() + b.toAirW()).as("seed 7, case %s", i).isCloseTo(heat, within(1e-6));
        }
    }

    @Test
    void speedHelpsUpToFortyFive() {
        assertThat(OilBalance.toAirWPerK(V8, 0)).isCloseTo(0.3 * 380, within(1e-9));
        assertThat(OilBalance.toAirWPerK(V8, 30)).isCloseTo(380, within(1e-9));
        assertThat(OilBalance.toAirWPerK(V8, 60)).isEqualTo(OilBalance.toAirWPerK(V8, 45));
    }

    @Test
    void limits() {
        assertThat(OilBalance.standing(Physics.kelvin(129))).isEqualTo(OilBalance.Standing.GO);
        assertThat(OilBalance.standing(Physics.kelvin(131))).isEqualTo(OilBalance.Standing.CAUTION);
        assertThat(OilBalance.standing(Physics.kelvin(151))).isEqualTo(OilBalance.Standing.NO_GO);
        assertThatThrownBy(() -> celsius(-1, 90, 10)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> celsius(1, 90, Double.NaN)).isInstanceOf(OutOfRangeException.class);
    }

    private static double celsius(double heatW, double coolantC, double speed) {
        return Physics.celsius(OilBalance.of(V8, heatW, Physics.kelvin(coolantC), Physics.kelvin(30), speed)
                .oilK());
    }
}

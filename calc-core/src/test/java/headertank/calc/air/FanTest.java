package headertank.calc.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FanTest {

    private static final long SEED = 11L;

    @ParameterizedTest
    @CsvSource({"0, 227.4", "0.4, 146.3", "0.8, 12.5", "1.2, -185.3"})
    void curveFromShutOffToBeyondFreeDelivery(double flow, double rise) {
        // Independent prototype of the same equations, printed to 0.1 Pa.
        double ours = AirCases.ROAD_FAN.risePa(flow, 1.1, AirCases.FULL);
        assertThat(ours).isCloseTo(rise, within(Math.max(0.05, 0.005 * Math.abs(rise))));
    }

    @Test
    void withoutPowerItResists() {
        assertThat(AirCases.ROAD_FAN.risePa(0.4, 1.1, 0)).isCloseTo(-36.2, Percentage.withPercentage(0.5));
    }

    @Test
    void fanLawsHoldForSpeedAndDensity() {
        Random r = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            Fan fan = Fan.of(AirCases.fan(r));
            double q = 3 * r.nextDouble();
            double n = 0.3 + r.nextDouble();
            double base = fan.risePa(q, 1.2, 1);
            String which = "seed " + SEED + " case " + i;
            assertThat(fan.risePa(q * n, 1.2, n))
                    .as(which)
                    .isCloseTo(base * n * n, within(1e-9 * (1 + Math.abs(base))));
            assertThat(fan.risePa(q, 0.9, 1)).as(which).isCloseTo(base * 0.75, within(1e-9 * (1 + Math.abs(base))));
        }
    }

    @Test
    void riseFallsWithFlow() {
        Random r = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            FanSpec spec = AirCases.fan(r);
            FanCurve curve = new FanCurve(spec);
            double n = r.nextInt(4) == 0 ? 0 : 1.2 * r.nextDouble();
            double last = Double.POSITIVE_INFINITY;
            for (double q = -1; q <= 4; q += 0.05) {
                double p = curve.risePa(q, 1.1, n);
                String which = "seed " + SEED + " case " + i + " " + spec + " speed " + n + " q " + q;
                assertThat(p).as(which).isLessThan(last);
                last = p;
            }
        }
    }

    @Test
    void curveIsSmoothAtFreeDelivery() {
        double q0 = 0.8;
        double h = 1e-6;
        double before = (AirCases.ROAD_FAN.risePa(q0, 1.2, 1) - AirCases.ROAD_FAN.risePa(q0 - h, 1.2, 1)) / h;
        double behind = (AirCases.ROAD_FAN.risePa(q0 + h, 1.2, 1) - AirCases.ROAD_FAN.risePa(q0, 1.2, 1)) / h;
        assertThat(behind).isCloseTo(before, Percentage.withPercentage(0.01));
    }

    @Test
    void likeFansShareTheFlow() {
        FanSpec one = FanSpec.of(1, 0.6, 220, 0.30, 0.11);
        Fan twice = Fan.of(FanSpec.of(2, 0.6, 220, 0.30, 0.11));
        for (double q = -0.5; q < 3; q += 0.1) {
            assertThat(twice.risePa(q, 1.1, 1)).isEqualTo(Fan.of(one).risePa(q / 2, 1.1, 1));
        }
    }

    @Test
    void aPusherTurnsSlowerAndSeesColdAir() {
        Fan pusher = Fan.of(AirCases.pushing(FanSpec.of(1, 0.8, 230, 0.40, 0.14)));
        assertThat(pusher.risePa(0, 1.2, 1)).isCloseTo(230 * 0.75 * 0.75, within(1e-9));
        assertThat(pusher.riseAtMassPa(0.3, 1.16, 1.03, 1)).isEqualTo(pusher.risePa(0.3 / 1.16, 1.16, 1));
        assertThat(AirCases.ROAD_FAN.riseAtMassPa(0.3, 1.16, 1.03, 1))
                .isEqualTo(AirCases.ROAD_FAN.risePa(0.3 / 1.03, 1.03, 1));
    }
}

package headertank.calc.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.choice.SensorPlacement;
import org.junit.jupiter.api.Test;

class SensorReadingTest {

    private static final double HOT = 368;
    private static final double COLD = 360;
    private static final double AMBIENT = 303;

    @Test
    void headAndBlockDoNotCareForFlow() {
        assertThat(reading(SensorPlacement.HEAD, 0)).isEqualTo(reading(SensorPlacement.HEAD, 2e-3));
        assertThat(reading(SensorPlacement.HEAD, 0).offsetK()).isCloseTo(2, within(1e-9));
        assertThat(reading(SensorPlacement.BLOCK, 0).steadyK()).isEqualTo(HOT);
        assertThat(reading(SensorPlacement.BLOCK, 0).lagS()).isEqualTo(4);
    }

    @Test
    void hoseReadsTheEngineOnlyWhileCoolantFlows() {
        assertThat(reading(SensorPlacement.RADIATOR_HOSE, 2e-3).steadyK()).isCloseTo(HOT, within(0.1));
        assertThat(reading(SensorPlacement.RADIATOR_HOSE, 0).steadyK()).isEqualTo(AMBIENT);
        assertThat(reading(SensorPlacement.RADIATOR_HOSE, 0).offsetK()).isEqualTo(AMBIENT - HOT);
        assertThat(reading(SensorPlacement.RADIATOR_HOSE, 0).lagS()).isCloseTo(304, within(1e-9));
    }

    @Test
    void tankReadsTheColdSide() {
        assertThat(reading(SensorPlacement.TANK, 2e-3).steadyK()).isCloseTo(COLD, within(0.2));
        assertThat(reading(SensorPlacement.TANK, 2e-3).lagS())
                .isGreaterThan(reading(SensorPlacement.BLOCK, 2e-3).lagS());
    }

    @Test
    void lessFlowReadsColderAndLater() {
        for (SensorPlacement place : new SensorPlacement[] {SensorPlacement.RADIATOR_HOSE, SensorPlacement.TANK}) {
            SensorReading before = reading(place, 5e-3);
            for (double flow = 4e-3; flow > 1e-9; flow *= 0.8) {
                SensorReading now = reading(place, flow);
                assertThat(now.steadyK()).as("%s at %s", place, flow).isBetween(AMBIENT, before.steadyK());
                assertThat(now.lagS()).as("%s at %s", place, flow).isBetween(before.lagS(), 304.0);
                before = now;
            }
            assertThat(before.steadyK()).isCloseTo(reading(place, 0).steadyK(), within(0.1));
        }
    }

    @Test
    void clampedSensorIsSlower() {
        assertThat(SensorReading.lagS(SensorPlacement.BLOCK, SensorMount.CLAMPED, 1e-3))
                .isEqualTo(15);
    }

    @Test
    void lagIsFirstOrder() {
        double shown = SensorReading.step(300, 400, 4, 4);
        assertThat(shown).isCloseTo(400 - 100 / Math.E, within(1e-9));
        double halves = SensorReading.step(SensorReading.step(300, 400, 4, 2), 400, 4, 2);
        assertThat(halves).isCloseTo(shown, within(1e-9));
        assertThat(SensorReading.step(300, 400, 4, 0)).isEqualTo(300);
    }

    private static SensorReading reading(SensorPlacement place, double flow) {
        return SensorReading.of(place, SensorMount.WETTED, HOT, COLD, AMBIENT, flow);
    }
}

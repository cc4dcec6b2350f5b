package headertank.calc.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.choice.AirExit;
import headertank.calc.quantity.Physics;
import org.junit.jupiter.api.Test;

class StandingCoreTest {

    private static final CoreDropCurve DROP = new CoreDropCurve(14, 2.4);

    /** By hand, 0.36 m high: Ra 1.5e8, Nu 69, 5.4 W/m2K; radiation 7.4 W/m2K. */
    @Test
    void filmIsThatOfAnUprightPlateAndARadiatingFace() {
        assertThat(StandingCore.filmWPerM2K(0.36, Physics.STANDARD_PRESSURE_PA)).isCloseTo(12.8, within(0.4));
    }

    /** Still air takes some 35 W/m2K off a core, hoses and tanks included: a breeze of a metre a second takes ten times that. */
    @Test
    void stillAirTakesLittle() {
        assertThat(lost(AirExit.UNDER_CAR, 1)).isBetween(4.0, 10.0);
    }

    @Test
    void ventInTheHoodDrawsAndABlockedCoreDoesNot() {
        assertThat(lost(AirExit.HOOD_VENT, 1)).isGreaterThan(1.5 * lost(AirExit.UNDER_CAR, 1));
        assertThat(lost(AirExit.HOOD_VENT, 0.2)).isLessThan(lost(AirExit.HOOD_VENT, 1));
        assertThat(lost(AirExit.HOOD_VENT, 0)).isCloseTo(lost(AirExit.UNDER_CAR, 0), within(1e-9));
    }

    private static double lost(AirExit exit, double openShare) {
        return StandingCore.conductanceWPerK(0.55, 0.36, openShare, DROP, exit, Physics.STANDARD_PRESSURE_PA);
    }
}

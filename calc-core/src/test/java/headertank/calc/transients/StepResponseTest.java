package headertank.calc.transients;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.control.FanControlSpec;
import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.rating.Plant;
import java.util.Arrays;
import org.hipparchus.ode.ODEState;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;

/** Parts of the car against closed forms: all other masses are made so large that they hold their temperature. */
class StepResponseTest {

    private static final double HELD = 1e15;
    private static final double BLOCK = 20e3;
    private static final double METAL = 90e3;
    private static final double START_K = 380;

    private final Plant plant = Plant.of(Rater.standard().resolve(Builds.drift()));
    private final OperatingPoint off = new OperatingPoint("off", "Off", 0, 0, 0, new Demand.EngineOff(0, false), 0);
    private final PointInRun place = new PointInRun(plant, off);
    private final double fromOil = place.oilToCoolantWPerK;
    private final double surface = plant.surfaceWPerK(0);
    private final double fromMetal = 60;

    /** One node: C T' = sum of UA (T_i - T), T = T_inf + (T_0 - T_inf) exp(-t/tau). */
    @Test
    void theBlockAloneFallsExponentially() {
        double[] y = run(new Masses(HELD, BLOCK, HELD, HELD, HELD, HELD), 360, 340, 330, 200);
        double all = fromMetal + fromOil + surface;
        double finallyK = (fromMetal * 360 + fromOil * 340 + surface * 330) / all;
        double expected = finallyK + (START_K - finallyK) * FastMath.exp(-200 * all / BLOCK);
        assertThat(y[LumpedCar.BLOCK]).isCloseTo(expected, within(2e-3));
        assertThat(y[LumpedCar.BLOCK]).isLessThan(START_K - 10);
    }

    /** Two nodes: eigenvalues of the two by two system by its quadratic equation. */
    @Test
    void metalAndBlockFollowTheTwoNodeSolution() {
        double metalStart = 420;
        double[] y = run(new Masses(METAL, BLOCK, HELD, HELD, HELD, HELD), metalStart, 340, 330, 400);
        double away = fromOil + surface;
        double endK = (fromOil * 340 + surface * 330) / away;
        double a = -fromMetal / METAL;
        double b = fromMetal / METAL;
        double c = fromMetal / BLOCK;
        double d = -(fromMetal + away) / BLOCK;
        double mean = 0.5 * (a + d);
        double root = FastMath.sqrt(0.25 * (a - d) * (a - d) + b * c);
        double slow = mean + root;
        double fast = mean - root;
        double m0 = metalStart - endK;
        double b0 = START_K - endK;
        double inSlow = (b0 * b + m0 * (a - fast)) / (slow - fast);
        double inFast = m0 - inSlow;
        double metal = inSlow * FastMath.exp(400 * slow) + inFast * FastMath.exp(400 * fast);
        double block =
                (inSlow * (slow - a) * FastMath.exp(400 * slow) + inFast * (fast - a) * FastMath.exp(400 * fast)) / b;
        assertThat(y[LumpedCar.METAL]).isCloseTo(endK + metal, within(2e-3));
        assertThat(y[LumpedCar.BLOCK]).isCloseTo(endK + block, within(2e-3));
        assertThat(y[LumpedCar.METAL]).isLessThan(metalStart - 5);
    }

    @Test
    void theWaxOfTheThermostatLagsByEightSeconds() {
        LumpedCar car = car(new Masses(HELD, HELD, HELD, HELD, HELD, HELD));
        double[] y = start(360, 340, 330);
        y[LumpedCar.WAX] = 350;
        double[] end =
                RunSolver.integrator(1).integrate(car, new ODEState(0, y), 12).getPrimaryState();
        assertThat(end[LumpedCar.WAX]).isCloseTo(START_K - 30 * FastMath.exp(-12.0 / 8), within(2e-3));
        assertThat(end[LumpedCar.FRICTION])
                .as("rising wax is held back by up to a kelvin")
                .isBetween(0.8, 1.0);
    }

    private double[] run(Masses masses, double metalK, double oilK, double hoodK, double seconds) {
        return RunSolver.integrator(1)
                .integrate(car(masses), new ODEState(0, start(metalK, oilK, hoodK)), seconds)
                .getPrimaryState();
    }

    private LumpedCar car(Masses masses) {
        Fans none = new Fans(plant, new FanControlSpec.Switch(FanControlSpec.SET.max(), 5), true);
        LumpedCar car = new LumpedCar(plant, masses, none, true);
        car.enter(place, -1e9);
        return car;
    }

    private double[] start(double metalK, double oilK, double hoodK) {
        double[] y = new double[LumpedCar.STATES];
        Arrays.fill(y, 0, LumpedCar.IN_J, START_K);
        y[LumpedCar.METAL] = metalK;
        y[LumpedCar.OIL] = oilK;
        y[LumpedCar.HOOD] = hoodK;
        y[LumpedCar.FRICTION] = 0;
        return y;
    }
}

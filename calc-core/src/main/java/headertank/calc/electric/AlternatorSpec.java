package headertank.calc.electric;

import headertank.calc.quantity.OutOfRangeException;
import org.hipparchus.util.FastMath;

/**
 * An alternator and what the rest of the car draws from it.
 *
 * <p>Output over rating, r = engine speed over idle speed: below idle s_i max(0, 2 r - 1), from idle on 1 - (1 - s_i)
 * exp(1 - r). So 0.4 at idle, 0.78 at twice and 0.97 at four times idle speed. The shape is a modelling choice that joins
 * at idle without a step, the share at idle a guess, one standard deviation 20 %; a published check compares both with one
 * maker's output test.
 *
 * @param ratedA rated output, 1 to 500 A, outside: typed error [A]
 * @param idleShare s_i, output at idle over rating, 0.05 to 1, outside: typed error [-]
 * @param baseLoadA ignition, pump, control unit and the like, 0 to 300 A, outside: typed error [A]
 */
public record AlternatorSpec(double ratedA, double idleShare, double baseLoadA) {

    /** Share of the rating at idle when nothing is known [-]; modelling choice. */
    public static final double DEFAULT_IDLE_SHARE = 0.4;

    /** Base load of a track or drift car, 20 A [A]; modelling choice. */
    public static final double COMPETITION_BASE_LOAD_A = 20;

    /** Base load of a street car, 35 A [A]; modelling choice. */
    public static final double STREET_BASE_LOAD_A = 35;

    public AlternatorSpec {
        OutOfRangeException.require("alternator.ratedA", ratedA, 1, 500);
        OutOfRangeException.require("alternator.idleShare", idleShare, 0.05, 1);
        OutOfRangeException.require("alternator.baseLoadA", baseLoadA, 0, 300);
    }

    /** @return an alternator with the default share at idle [A] */
    public static AlternatorSpec of(double ratedA, double baseLoadA) {
        return new AlternatorSpec(ratedA, DEFAULT_IDLE_SHARE, baseLoadA);
    }

    /**
     * @param engineSpeedOverIdle engine speed over its idle speed, 0 to 50, outside: typed error [-]
     * @return what it can deliver [A]
     */
    public double outputA(double engineSpeedOverIdle) {
        OutOfRangeException.require("engineSpeedOverIdle", engineSpeedOverIdle, 0, 50);
        if (engineSpeedOverIdle < 1) {
            return ratedA * idleShare * Math.max(0, 2 * engineSpeedOverIdle - 1);
        }
        return ratedA * (1 - (1 - idleShare) * FastMath.exp(1 - engineSpeedOverIdle));
    }
}

package headertank.calc.control;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.OptionalDouble;

/** How fans are controlled by a sensed temperature. Values outside the stated ranges: typed error. */
public sealed interface FanControlSpec {

    /** Set points that are accepted [K]. */
    Range SET = Range.of(270, 420);

    /** Hysteresis and bands that are accepted [K]. */
    Range BAND = Range.of(0.1, 60);

    /** @return sensed temperature from which the fans turn, going up [K]; empty when it does not depend on one */
    OptionalDouble startK();

    /**
     * One relay: on at the set point, off at set point less hysteresis.
     *
     * @param setK set point, 270 to 420 [K]
     * @param hysteresisK hysteresis, 0.1 to 60 [K]
     */
    record Switch(double setK, double hysteresisK) implements FanControlSpec {
        public Switch {
            OutOfRangeException.require("fanControl.setK", setK, SET);
            OutOfRangeException.require("fanControl.hysteresisK", hysteresisK, BAND);
        }

        @Override
        public OptionalDouble startK() {
            return OptionalDouble.of(setK);
        }
    }

    /**
     * Two relays: a low step and full speed, each with the same hysteresis.
     *
     * @param lowSetK set point of the low step, 270 to 420 [K]
     * @param fullSetK set point of full speed, not below the low one, to 420 [K]
     * @param hysteresisK hysteresis of both, 0.1 to 60 [K]
     * @param lowDuty duty of the low step, 0.05 to 1 [-]
     */
    record TwoStep(double lowSetK, double fullSetK, double hysteresisK, double lowDuty) implements FanControlSpec {
        public TwoStep {
            OutOfRangeException.require("fanControl.lowSetK", lowSetK, SET);
            OutOfRangeException.require("fanControl.fullSetK", fullSetK, Range.of(lowSetK, SET.max()));
            OutOfRangeException.require("fanControl.hysteresisK", hysteresisK, BAND);
            OutOfRangeException.require("fanControl.lowDuty", lowDuty, Range.of(0.05, 1));
        }

        @Override
        public OptionalDouble startK() {
            return OptionalDouble.of(lowSetK);
        }
    }

    /**
     * Proportional: nothing below set point less band, full at the set point. Usual is a band of 15 K and a minimum of
     * 0.25, below which fans do not start turning; common practice, no source.
     *
     * @param setK set point, full duty from here, 270 to 420 [K]
     * @param bandK width of the ramp, 0.1 to 60 [K]
     * @param minimumDuty smallest duty once they turn, 0 to 1 [-]
     */
    record Ramp(double setK, double bandK, double minimumDuty) implements FanControlSpec {

        /** Usual band [K]; common practice, no source. */
        public static final double USUAL_BAND_K = 15;

        /** Usual smallest duty [-]; common practice, no source. */
        public static final double USUAL_MINIMUM_DUTY = 0.25;

        public Ramp {
            OutOfRangeException.require("fanControl.setK", setK, SET);
            OutOfRangeException.require("fanControl.bandK", bandK, BAND);
            OutOfRangeException.require("fanControl.minimumDuty", minimumDuty, Range.of(0, 1));
        }

        /** @return a ramp of usual band and smallest duty; set point [K] */
        public static Ramp to(double setK) {
            return new Ramp(setK, USUAL_BAND_K, USUAL_MINIMUM_DUTY);
        }

        @Override
        public OptionalDouble startK() {
            return OptionalDouble.of(setK - bandK);
        }
    }

    /** Full duty whenever the engine runs. */
    record AlwaysOn() implements FanControlSpec {
        @Override
        public OptionalDouble startK() {
            return OptionalDouble.empty();
        }
    }

    /** No electric fan, or one that nothing switches on. */
    record None() implements FanControlSpec {
        @Override
        public OptionalDouble startK() {
            return OptionalDouble.empty();
        }
    }
}

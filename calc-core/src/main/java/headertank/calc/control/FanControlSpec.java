package headertank.calc.control;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.List;
import java.util.OptionalDouble;

/** How fans are controlled by a sensed temperature. Values outside the stated ranges: typed error. */
public sealed interface FanControlSpec {

    /** Set points that are accepted [K]. */
    Range SET = Range.of(270, 420);

    /** Hysteresis and bands that are accepted [K]. */
    Range BAND = Range.of(0.1, 60);

    /** Times to wind fans up that are accepted [s]. */
    Range SOFT_START = Range.of(0, 30);

    /** Usual time to wind fans up [s]; modelling choice. */
    double USUAL_SOFT_START_S = 3;

    /** @return sensed temperature from which the fans turn, going up [K]; empty when it does not depend on one */
    OptionalDouble startK();

    /** @return sensed temperature below which they stand again [K]; empty when it does not depend on one */
    default OptionalDouble stopK() {
        return startK();
    }

    /** @return time over which the fans are wound up, 0 when a relay closes at once [s] */
    default double softStartS() {
        return 0;
    }

    /**
     * One relay: on at the set point, off at set point less hysteresis.
     *
     * @param setK set point, 270 to 420 [K]
     * @param hysteresisK hysteresis, 0.1 to 60 [K]
     */
    record Switch(double setK, double hysteresisK) implements FanControlSpec {

        /** Usual hysteresis [K]; common practice, no source. */
        public static final double USUAL_HYSTERESIS_K = 5;

        public Switch {
            OutOfRangeException.require("fanControl.setK", setK, SET);
            OutOfRangeException.require("fanControl.hysteresisK", hysteresisK, BAND);
        }

        @Override
        public OptionalDouble startK() {
            return OptionalDouble.of(setK);
        }

        @Override
        public OptionalDouble stopK() {
            return OptionalDouble.of(setK - hysteresisK);
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

        /** Usual distance of the two set points [K]; common practice, no source. */
        public static final double USUAL_STEP_K = 7;

        /** Usual duty of the low step [-]: half speed, or one fan of two; common practice, no source. */
        public static final double USUAL_LOW_DUTY = 0.5;

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

        @Override
        public OptionalDouble stopK() {
            return OptionalDouble.of(lowSetK - hysteresisK);
        }
    }

    /**
     * Proportional: nothing below set point less band, full at the set point. Usual is a band of 15 K and a minimum of
     * 0.25, below which fans do not start turning; common practice, no source.
     *
     * @param setK set point, full duty from here, 270 to 420 [K]
     * @param bandK width of the ramp, 0.1 to 60 [K]
     * @param minimumDuty smallest duty once they turn, 0 to 1 [-]
     * @param softStartS time over which they are wound up, 0 to 30 [s]
     */
    record Ramp(double setK, double bandK, double minimumDuty, double softStartS) implements FanControlSpec {

        /** Usual band [K]; common practice, no source. */
        public static final double USUAL_BAND_K = 15;

        /** Usual smallest duty [-]; common practice, no source. */
        public static final double USUAL_MINIMUM_DUTY = 0.25;

        public Ramp {
            OutOfRangeException.require("fanControl.setK", setK, SET);
            OutOfRangeException.require("fanControl.bandK", bandK, BAND);
            OutOfRangeException.require("fanControl.minimumDuty", minimumDuty, Range.of(0, 1));
            OutOfRangeException.require("fanControl.softStartS", softStartS, SOFT_START);
        }

        /** A ramp that winds its fans up over the usual time. */
        public Ramp(double setK, double bandK, double minimumDuty) {
            this(setK, bandK, minimumDuty, USUAL_SOFT_START_S);
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

    /**
     * An engine controller's table of duty against temperature, straight lines between its rows, held beyond the first and
     * the last.
     *
     * @param rows at least two, temperatures rising, duties not falling
     * @param softStartS time over which they are wound up, 0 to 30 [s]
     */
    record Table(List<Row> rows, double softStartS) implements FanControlSpec {
        public Table {
            rows = List.copyOf(rows);
            OutOfRangeException.require("fanControl.rows", rows.size(), Range.of(2, 64));
            OutOfRangeException.require("fanControl.softStartS", softStartS, SOFT_START);
            for (int i = 1; i < rows.size(); i++) {
                double before = rows.get(i - 1).sensedK();
                OutOfRangeException.require(
                        "fanControl.rowK", rows.get(i).sensedK(), Range.of(before + 0.1, 420.0 + i));
                OutOfRangeException.require(
                        "fanControl.rowDuty",
                        rows.get(i).duty(),
                        Range.of(rows.get(i - 1).duty(), 1));
            }
        }

        /** @return duty of the table at a sensed temperature [K]; no number is taken as cold [-] */
        public double dutyAt(double sensedK) {
            int i = 1;
            while (i < rows.size() - 1 && sensedK > rows.get(i).sensedK()) {
                i++;
            }
            Row a = rows.get(i - 1);
            Row b = rows.get(i);
            double share = (sensedK - a.sensedK()) / (b.sensedK() - a.sensedK());
            return share > 0 ? a.duty() + Math.min(1, share) * (b.duty() - a.duty()) : a.duty();
        }

        @Override
        public OptionalDouble startK() {
            if (rows.get(0).duty() > 0) {
                return OptionalDouble.empty();
            }
            for (int i = 1; i < rows.size(); i++) {
                if (rows.get(i).duty() > 0) {
                    return OptionalDouble.of(rows.get(i - 1).sensedK());
                }
            }
            return OptionalDouble.empty();
        }
    }

    /**
     * One row of a table.
     *
     * @param sensedK temperature at the sensor, 270 to 420 [K]
     * @param duty duty there, 0 to 1 [-]
     */
    record Row(double sensedK, double duty) {
        public Row {
            OutOfRangeException.require("fanControl.rowK", sensedK, SET);
            OutOfRangeException.require("fanControl.rowDuty", duty, Range.of(0, 1));
        }
    }

    /** Full duty whenever the engine runs. */
    record AlwaysOn() implements FanControlSpec {
        @Override
        public OptionalDouble startK() {
            return OptionalDouble.empty();
        }
    }
}

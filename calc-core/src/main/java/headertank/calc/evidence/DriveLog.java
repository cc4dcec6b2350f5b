package headertank.calc.evidence;

import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.List;
import java.util.Optional;

/**
 * A log of the car, driven or standing: what it did, moment by moment, and what its coolant sensor showed meanwhile.
 *
 * @param ambientK air around the car, 233 to 328 [K]
 * @param ambientSigmaK one standard deviation of that, 0.1 to 15; what a thermometer of the car shows at a cold start 2, on a
 *     hot engine more (modelling choices) [K]
 * @param rows moments in their order, at least ten
 * @param drove the duty that its driver drove in it, as hard as this driver drives; nothing when nobody says so, and then the log
 *     teaches nothing about the driver
 */
public record DriveLog(double ambientK, double ambientSigmaK, List<Row> rows, Optional<Duty> drove)
        implements Evidence {

    /** A log of which nobody says what was driven. */
    public DriveLog(double ambientK, double ambientSigmaK, List<Row> rows) {
        this(ambientK, ambientSigmaK, rows, Optional.empty());
    }

    /**
     * @param duty a duty with a point at which a driver decides how hard it is, as {@link Demand.Mix} says
     * @return the same log, in which that duty was driven
     */
    public DriveLog driving(Duty duty) {
        return new DriveLog(ambientK, ambientSigmaK, rows, Optional.of(duty));
    }

    /**
     * One moment.
     *
     * @param timeS time, rising from row to row [s]
     * @param coolantK what the coolant sensor showed, no number where it showed nothing [K]
     * @param enginePerS engine speed, 0 with the engine off [rev/s]
     * @param manifoldPa absolute pressure in the intake manifold [Pa]
     * @param intakeK air in the intake manifold [K]
     * @param roadMPerS road speed [m/s]
     */
    public record Row(
            double timeS, double coolantK, double enginePerS, double manifoldPa, double intakeK, double roadMPerS) {

        public Row {
            OutOfRangeException.require("log.timeS", timeS, -1e9, 1e9);
            if (!Double.isNaN(coolantK)) {
                OutOfRangeException.require("log.coolantK", coolantK, 223.15, 433.15);
            }
            OutOfRangeException.require("log.enginePerS", enginePerS, 0, 300);
            OutOfRangeException.require("log.manifoldPa", manifoldPa, 0, 6e5);
            OutOfRangeException.require("log.intakeK", intakeK, 223.15, 433.15);
            OutOfRangeException.require("log.roadMPerS", roadMPerS, 0, 110);
        }
    }

    public DriveLog {
        drove.ifPresent(d -> {
            if (d.points().stream().noneMatch(p -> p.demand() instanceof Demand.Mix)) {
                throw new IllegalArgumentException(
                        "duty " + d.id() + " has no point at which a driver decides how hard it is");
            }
        });
        OutOfRangeException.require("log.ambientK", ambientK, 233.15, 328.15);
        OutOfRangeException.require("log.ambientSigmaK", ambientSigmaK, 0.1, 15);
        rows = List.copyOf(rows);
        OutOfRangeException.require("log.rows", rows.size(), 10, 20_000_000);
        for (int i = 1; i < rows.size(); i++) {
            double step = rows.get(i).timeS() - rows.get(i - 1).timeS();
            if (!(step > 0)) {
                throw new OutOfRangeException("log.timeStepS", step, Range.of(1e-6, 1e9));
            }
        }
        if (Double.isNaN(rows.get(0).coolantK())) {
            throw new IllegalArgumentException(
                    "a log begins with a moment at which the coolant sensor showed something");
        }
    }
}

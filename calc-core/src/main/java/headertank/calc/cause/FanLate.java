package headertank.calc.cause;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.ControlTable;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import java.util.Optional;

/** The fans start later than they should: sensor, switch, a wrong row of a table. */
public final class FanLate implements CauseOfPractice {

    @Override
    public String id() {
        return "fan-late";
    }

    @Override
    public Message name() {
        return CauseText.FAN_LATE.with();
    }

    @Override
    public double prior(Resolved car, Sighting seen) {
        return car.is(BuildField.FAN_DRIVE, FanDrive.ELECTRIC) ? 5 : 0;
    }

    @Override
    public Fault on(Fault car, double severity) {
        Fault late =
                car.moved(BuildField.CONTROL_SET, lateK(severity)).moved(BuildField.CONTROL_LOW_SET, lateK(severity));
        for (ControlTable.Row row : ControlTable.ROWS) {
            late = late.moved(row.temperature(), lateK(severity));
        }
        return late;
    }

    @Override
    public Optional<Message> amount(double severity) {
        return Optional.of(CauseText.FAN_LATE_AMOUNT.with(SiFigure.difference(lateK(severity))));
    }

    @Override
    public List<Chance> signs() {
        return List.of(
                new Chance(Observation.COOLED_AT_SPEED, 0.55),
                new Chance(Observation.STARTED_AFTER_WORK, 0.50),
                new Chance(Observation.FAN_SILENT, 0.45),
                new Chance(Observation.FAN_START_LATE, 0.85),
                new Chance(Observation.LOWER_HOSE_HOT, 0.60),
                new Chance(Observation.FORCED_FAN_COOLS, 0.93),
                new Chance(Observation.NEEDLE_CREPT, 0.75));
    }

    private static double lateK(double severity) {
        return 6 + 20 * severity;
    }
}

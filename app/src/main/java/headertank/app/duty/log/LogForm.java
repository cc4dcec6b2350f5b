package headertank.app.duty.log;

import headertank.app.log.read.LogQuantity;
import java.util.List;

/**
 * A log and the duty that is to come of it, as typed; what its columns are taken for is sent beside.
 *
 * @param log text of the log, empty when a file is sent
 * @param ratedSpeed engine speed of rated power, with its unit
 * @param startCoolant coolant when the log begins, with its unit
 * @param meaning what the load column tells
 */
record LogForm(String log, String id, String label, String ratedSpeed, String startCoolant, Meaning meaning) {

    /** What a column of load tells; the columns that may tell it, the first one that is there. */
    enum Meaning {
        /** Torque over the most that the engine gives at that speed. */
        LOAD(LogQuantity.LOAD, LogQuantity.THROTTLE, LogQuantity.PEDAL, LogQuantity.POWER),
        /** How far the throttle is open, taken for the load. */
        THROTTLE(LogQuantity.THROTTLE, LogQuantity.PEDAL, LogQuantity.LOAD, LogQuantity.POWER),
        /** Brake power over rated power. */
        POWER(LogQuantity.POWER, LogQuantity.LOAD, LogQuantity.THROTTLE, LogQuantity.PEDAL);

        final List<LogQuantity> columns;

        Meaning(LogQuantity... columns) {
            this.columns = List.of(columns);
        }
    }

    LogForm {
        log = log == null ? "" : log;
        id = text(id);
        label = text(label);
        ratedSpeed = text(ratedSpeed);
        startCoolant = text(startCoolant);
        meaning = meaning == null ? Meaning.LOAD : meaning;
    }

    private static String text(String typed) {
        return typed == null ? "" : typed.strip();
    }

    static LogForm blank(String startCoolant) {
        return new LogForm("", "", "", "", startCoolant, Meaning.LOAD);
    }

    LogForm with(String otherLog) {
        return new LogForm(otherLog, id, label, ratedSpeed, startCoolant, meaning);
    }
}

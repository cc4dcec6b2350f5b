package headertank.app.duty.log;

/**
 * A log and how it is to be read, as typed.
 *
 * @param log text of the log, empty when a file is sent
 * @param ratedSpeed engine speed of rated power, with its unit
 * @param startCoolant coolant when the log begins, with its unit
 * @param meaning what the load column tells
 * @param timeColumn heading of a column; empty to find it by its usual names, likewise the others
 * @param timeUnit unit of a column; empty to take it from the heading, likewise the others
 */
record LogForm(
        String log,
        String id,
        String label,
        String ratedSpeed,
        String startCoolant,
        Meaning meaning,
        String timeColumn,
        String timeUnit,
        String speedColumn,
        String speedUnit,
        String engineColumn,
        String loadColumn,
        String loadUnit) {

    /** What a column of load tells. */
    enum Meaning {
        /** Torque over the most that the engine gives at that speed. */
        LOAD,
        /** How far the throttle is open, taken for the load. */
        THROTTLE,
        /** Brake power over rated power. */
        POWER
    }

    LogForm {
        log = log == null ? "" : log;
        id = text(id);
        label = text(label);
        ratedSpeed = text(ratedSpeed);
        startCoolant = text(startCoolant);
        meaning = meaning == null ? Meaning.LOAD : meaning;
        timeColumn = text(timeColumn);
        timeUnit = text(timeUnit);
        speedColumn = text(speedColumn);
        speedUnit = text(speedUnit);
        engineColumn = text(engineColumn);
        loadColumn = text(loadColumn);
        loadUnit = text(loadUnit);
    }

    private static String text(String typed) {
        return typed == null ? "" : typed.strip();
    }

    static LogForm blank(String startCoolant) {
        return new LogForm("", "", "", "", startCoolant, Meaning.LOAD, "", "", "", "", "", "", "");
    }

    LogForm with(String otherLog) {
        return new LogForm(
                otherLog,
                id,
                label,
                ratedSpeed,
                startCoolant,
                meaning,
                timeColumn,
                timeUnit,
                speedColumn,
                speedUnit,
                engineColumn,
                loadColumn,
                loadUnit);
    }
}

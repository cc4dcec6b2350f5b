package headertank.app.incident.cause;

import headertank.calc.cause.Inquiry;

/** What can hurt somebody who does a test; its caution stands beside it. */
enum TestHazard {
    /** The engine is hot and runs. */
    RUNNING,
    /** The system is opened, or a pressure is put on it. */
    OPENED,
    /** Fans and their current. */
    FANS,
    /** Somebody looks and asks. */
    LOOKING;

    static TestHazard of(Inquiry test) {
        return switch (test) {
            case LEVEL, CAP, POT, COLD_PRESSURE, GAS, TANK_FLOW -> OPENED;
            case FAN_RUN, FAN_START, FORCED_FAN -> FANS;
            case LOWER_HOSE, CORE_FACE, BELT, SECOND_GAUGE, HEAT_SOURCES -> RUNNING;
            default -> LOOKING;
        };
    }
}

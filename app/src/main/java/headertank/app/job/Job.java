package headertank.app.job;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * A job with its history, oldest first.
 *
 * @param version counts the changes, so that two people do not overwrite each other
 */
record Job(JobLine line, int version, List<Event> events) {

    Job {
        events = List.copyOf(events);
    }

    /** What can happen to a job. */
    enum Kind {
        OPENED,
        CHANGED,
        PAUSED,
        RESUMED,
        HANDED_OVER,
        TAKEN_BACK,
        CALLED_OFF
    }

    /**
     * What happened.
     *
     * @param asked what was to be done from then on
     * @param promisedOn and until when
     */
    record Event(Kind kind, String asked, LocalDate promisedOn, String reason, String who, Instant at) {}
}

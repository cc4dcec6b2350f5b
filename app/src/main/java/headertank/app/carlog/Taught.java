package headertank.app.carlog;

import headertank.calc.carspec.Learned;
import headertank.calc.evidence.Replay;
import headertank.calc.verdict.DutyVerdict;
import java.util.List;
import java.util.Optional;

/**
 * What a log teaches of the newest revision of its car.
 *
 * @param revision number of that revision
 * @param before the log driven again by the car as its revision says
 * @param lesson what came of learning; empty where nobody asked for it
 */
record Taught(int revision, DriveRows rows, Replay before, Optional<Lesson> lesson) {

    /**
     * What was learned.
     *
     * @param after the log driven again by the car that has learned from it
     * @param duties each duty of the revision before and after
     */
    record Lesson(Learned learned, Replay after, List<DutyPair> duties) {
        Lesson {
            duties = List.copyOf(duties);
        }
    }

    /** A verdict without the log and with it. */
    record DutyPair(DutyVerdict before, DutyVerdict after) {}
}

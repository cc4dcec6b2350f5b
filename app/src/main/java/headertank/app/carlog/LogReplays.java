package headertank.app.carlog;

import headertank.app.carspec.Revision;
import headertank.app.evidence.Lesson;
import headertank.app.evidence.Lessons;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.duty.Duty;
import headertank.calc.evidence.DriveLog;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** Drives a log again, by the car as its revision says and as its evidence has taught. Nothing of it is kept. */
@Component
class LogReplays {

    private final Supplier<Rater> rater;
    private final CarLogs logs;
    private final Lessons lessons;

    LogReplays(Supplier<Rater> rater, CarLogs logs, Lessons lessons) {
        this.rater = rater;
        this.logs = logs;
        this.lessons = lessons;
    }

    /** Duties of a revision at which a driver decides how hard it is: those that a log may be said to have driven. */
    List<Duty> drivable(Revision revision) {
        Rater here = rater.get();
        return revision.spec().dutyIds().stream()
                .map(here.duties()::get)
                .filter(Objects::nonNull)
                .filter(LogEvidence::isDrivable)
                .toList();
    }

    /** @return the log driven again; empty when it lacks something, or the car as its revision says has no answer to it */
    Optional<Taught> of(KeptLog kept, Revision revision) throws IOException {
        Rater here = rater.get();
        DriveRows rows = DriveRows.read(logs.text(kept), kept.reading());
        Optional<DriveLog> driven = LogEvidence.driven(rows, kept, here);
        if (driven.isEmpty()) {
            return Optional.empty();
        }
        Build build = revision.spec().build();
        Optional<Lesson> lesson =
                lessons.lesson(kept.carId()).filter(l -> !l.learned().isNothing());
        try {
            return Optional.of(new Taught(
                    revision.number(), rows, here.replay(build, driven.get()), lesson.map(l -> lessons.knowing(l)
                            .replay(build, driven.get()))));
        } catch (IllegalArgumentException noAnswer) {
            return Optional.empty();
        }
    }
}

package headertank.app.carlog;

import headertank.app.carlog.Taught.DutyPair;
import headertank.app.carlog.Taught.Lesson;
import headertank.app.carspec.Revision;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.Learned;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.evidence.DriveLog;
import headertank.calc.evidence.Replay;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** Drives a log again and learns from it: seconds of work, outside of any transaction. Nothing of it is kept. */
@Component
class LogTeacher {

    private final Supplier<Rater> rater;
    private final CarLogs logs;

    LogTeacher(Supplier<Rater> rater, CarLogs logs) {
        this.rater = rater;
        this.logs = logs;
    }

    /** Duties of a revision at which a driver decides how hard it is: those that a log may be said to have driven. */
    List<Duty> drivable(Revision revision) {
        return duties(revision).stream()
                .filter(d -> d.points().stream().anyMatch(p -> p.demand() instanceof Demand.Mix))
                .toList();
    }

    private List<Duty> duties(Revision revision) {
        Rater here = rater.get();
        return revision.spec().dutyIds().stream()
                .map(here.duties()::get)
                .filter(Objects::nonNull)
                .toList();
    }

    /**
     * @param learning whether to learn too, which takes the longest
     * @return what the log teaches; empty when the log lacks something, or the car as its revision says has no answer to it
     */
    Optional<Taught> of(KeptLog kept, Revision revision, boolean learning) throws IOException {
        DriveRows rows = DriveRows.read(logs.text(kept), kept.reading());
        Optional<DriveLog> driven = rows.log().map(log -> drivable(revision).stream()
                .filter(d -> d.id().equals(kept.reading().drove()))
                .findFirst()
                .map(log::driving)
                .orElse(log));
        if (driven.isEmpty()) {
            return Optional.empty();
        }
        try {
            Build build = revision.spec().build();
            Replay before = rater.get().replay(build, driven.get());
            Optional<Lesson> lesson = learning ? Optional.of(lesson(revision, driven.get())) : Optional.empty();
            return Optional.of(new Taught(revision.number(), rows, before, lesson));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Lesson lesson(Revision revision, DriveLog log) {
        Rater here = rater.get();
        Build build = revision.spec().build();
        Learned learned = here.learn(build, log);
        Rater knowing = here.knowing(learned);
        List<DutyPair> pairs = new ArrayList<>();
        List<Duty> duties = duties(revision);
        if (!duties.isEmpty()) {
            Rating before = here.rate(build, duties);
            Rating after = knowing.rate(build, duties);
            for (int i = 0; i < duties.size(); i++) {
                pairs.add(new DutyPair(before.duties().get(i), after.duties().get(i)));
            }
        }
        return new Lesson(learned, knowing.replay(build, log), pairs);
    }
}

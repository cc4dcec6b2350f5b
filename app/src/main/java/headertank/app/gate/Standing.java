package headertank.app.gate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Where a car stands on its way back to its customer. Immutable; {@link Step} makes the next one.
 *
 * @param job the job that is looked at
 * @param described whether the car has a revision
 * @param check of the newest revision, as far as it answers this job
 * @param listComplete whether no item of that check's list is missing
 * @param decided whether that list is decided, "the car leaves", and neither a signature nor a fault has come since
 * @param faults what is open, by kind
 * @param away whether the visit is over and nothing was rated since; {@code check} and the list then stay as they were
 */
public record Standing(
        Job job,
        boolean described,
        Check check,
        boolean listComplete,
        boolean decided,
        Map<FaultKind, Open> faults,
        boolean away) {

    /** Nobody has done anything yet. */
    public static final Standing NEW = new Standing(Job.NONE, false, Check.NONE, false, false, Map.of(), false);

    public Standing {
        Map<FaultKind, Open> copy = new EnumMap<>(FaultKind.class);
        faults.forEach((kind, open) -> {
            if (open != Open.NONE) {
                copy.put(kind, open);
            }
        });
        faults = Map.copyOf(copy);
    }

    /** A job's own state. */
    public enum Job {
        NONE,
        OPEN,
        PAUSED,
        HANDED_OVER,
        CALLED_OFF
    }

    /** The check that counts. */
    public enum Check {
        /** There is none, it is out of date, or it belongs to an earlier visit. */
        NONE,
        UNSIGNED,
        LEAVES,
        STAYS
    }

    /** Open faults of one kind, seen from the newest revision. */
    public enum Open {
        NONE,
        /** Found since the newest revision. */
        NEW,
        /** Found before it: the revision may have put them right. */
        OLD,
        BOTH;

        boolean hasOld() {
            return this == OLD || this == BOTH;
        }

        Open found() {
            return hasOld() ? BOTH : NEW;
        }

        Open revised() {
            return this == NONE ? NONE : OLD;
        }

        Open withoutOld() {
            return this == BOTH || this == NEW ? NEW : NONE;
        }

        public static Open of(boolean isNew, boolean isOld) {
            return isNew ? isOld ? BOTH : NEW : isOld ? OLD : NONE;
        }
    }

    public Open open(FaultKind kind) {
        return faults.getOrDefault(kind, Open.NONE);
    }

    public boolean hasFault() {
        return !faults.isEmpty();
    }

    /** Whether something is open at an item of the list, found or read. */
    boolean hasFaultAtAnItem() {
        return open(FaultKind.FOUND) != Open.NONE || open(FaultKind.READING) != Open.NONE;
    }

    /** Whether there is a check that can be worked on. */
    public boolean isRated() {
        return check != Check.NONE && !away;
    }

    /** Why the car may not leave, in the order in which it is put right; empty when it may. */
    public List<Obstacle> obstacles() {
        List<Obstacle> all = new ArrayList<>();
        if (!described) {
            all.add(Obstacle.NOT_DESCRIBED);
        } else if (!isRated()) {
            all.add(Obstacle.NOT_RATED);
        } else if (check == Check.UNSIGNED) {
            all.add(Obstacle.NOT_SIGNED);
        } else if (check == Check.STAYS) {
            all.add(Obstacle.SIGNED_TO_STAY);
        }
        if (open(FaultKind.SENT_BACK) != Open.NONE) {
            all.add(Obstacle.SENT_BACK);
        }
        if (hasFaultAtAnItem()) {
            all.add(Obstacle.FAULT_OPEN);
        }
        if (isRated() && !(listComplete && decided)) {
            all.add(Obstacle.LIST_UNDECIDED);
        }
        return List.copyOf(all);
    }

    /** Signed, its list decided, no fault open. */
    public boolean mayLeave() {
        return obstacles().isEmpty();
    }

    /** What is to be done next. */
    public Stage stage() {
        switch (job) {
            case HANDED_OVER:
                return Stage.HANDED_OVER;
            case CALLED_OFF:
                return Stage.CALLED_OFF;
            case PAUSED:
                return Stage.PAUSED;
            default:
                break;
        }
        List<Obstacle> in = obstacles();
        if (in.contains(Obstacle.NOT_DESCRIBED)) {
            return Stage.TO_DESCRIBE;
        }
        if (in.contains(Obstacle.NOT_RATED)) {
            return Stage.TO_RATE;
        }
        if (in.contains(Obstacle.SENT_BACK)) {
            return Stage.SENT_BACK;
        }
        if (in.contains(Obstacle.FAULT_OPEN)) {
            return Stage.FAULT_OPEN;
        }
        if (in.contains(Obstacle.NOT_SIGNED)) {
            return Stage.TO_SIGN;
        }
        if (in.contains(Obstacle.SIGNED_TO_STAY)) {
            return Stage.STAYS;
        }
        return in.isEmpty() ? Stage.READY : Stage.TO_GO_THROUGH;
    }

    Standing withJob(Job now) {
        return new Standing(now, described, check, listComplete, decided, faults, away);
    }

    Standing signed(Check now) {
        return new Standing(job, described, now, listComplete, false, faults, away);
    }

    /** As seen from a check that does not count. */
    Standing uncounted() {
        return new Standing(job, described, Check.NONE, false, false, faults, away);
    }

    /** A check that nobody has worked on. */
    Standing rated(Check now) {
        return new Standing(job, described, now, false, false, faults, false);
    }

    /** For whoever has looked at the items of the list. */
    public Standing withList(boolean complete) {
        return new Standing(job, described, check, complete, decided, faults, away);
    }

    Standing withDecision(boolean now) {
        return new Standing(job, described, check, listComplete, now, faults, away);
    }

    Standing withAway(boolean now) {
        return new Standing(job, described, check, listComplete, decided, faults, now);
    }

    Standing revised() {
        Map<FaultKind, Open> older = new EnumMap<>(FaultKind.class);
        faults.forEach((kind, open) -> older.put(kind, open.revised()));
        boolean over = job == Job.HANDED_OVER || job == Job.CALLED_OFF;
        return new Standing(job, true, Check.NONE, false, false, older, away || over);
    }

    Standing withFault(FaultKind kind, Open now) {
        Map<FaultKind, Open> copy = new EnumMap<>(FaultKind.class);
        copy.putAll(faults);
        copy.put(kind, now);
        return new Standing(job, described, check, listComplete, decided, copy, away);
    }
}

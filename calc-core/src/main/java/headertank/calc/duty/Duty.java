package headertank.calc.duty;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A way of using a car.
 *
 * @param id stable name, e.g. {@code drift}
 * @param label plain English
 * @param points its operating points; each is rated at its steady state
 * @param schedule how the points follow each other; empty for a duty judged by its steady states alone
 * @param source where the figures come from
 * @param judged what its verdict comes from
 */
public record Duty(
        String id,
        String label,
        List<OperatingPoint> points,
        Optional<Schedule> schedule,
        String source,
        Judged judged) {

    /** What a verdict on a duty comes from. */
    public enum Judged {
        /** The worst steady state of its points. */
        STEADY,
        /**
         * The peak of its run, and the steady state of those points that idle, where a car may well stand for long; for loads
         * that end long before a steady state.
         */
        RUN_AND_IDLE,
        /** The worse of the peak of its run and the worst steady state of its points. */
        BOTH
    }

    /** A duty with a schedule is judged by its run and where it idles, one without by its steady states. */
    public Duty(String id, String label, List<OperatingPoint> points, Optional<Schedule> schedule, String source) {
        this(id, label, points, schedule, source, schedule.isPresent() ? Judged.RUN_AND_IDLE : Judged.STEADY);
    }

    public Duty {
        if (judged != Judged.STEADY && schedule.isEmpty()) {
            throw new IllegalArgumentException("duty " + id + " has no schedule to be judged by");
        }
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("duty " + id + " needs at least one operating point");
        }
        Set<String> ids = new HashSet<>();
        for (OperatingPoint p : points) {
            if (!ids.add(p.id())) {
                throw new IllegalArgumentException("duty " + id + " has two operating points called " + p.id());
            }
        }
        schedule.ifPresent(s -> s.phases().forEach(p -> {
            if (!ids.contains(p.pointId())) {
                throw new IllegalArgumentException("duty " + id + " has no operating point " + p.pointId());
            }
        }));
    }

    /** @throws IllegalArgumentException when there is no such point */
    public OperatingPoint point(String pointId) {
        return points.stream()
                .filter(p -> p.id().equals(pointId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("duty " + id + " has no operating point " + pointId));
    }
}

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
 * @param schedule how the points follow each other, for a duty whose verdict must come from a run over time because its
 *     loads end long before a steady state; empty for a duty judged by its steady states
 * @param source where the figures come from
 */
public record Duty(String id, String label, List<OperatingPoint> points, Optional<Schedule> schedule, String source) {

    public Duty {
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

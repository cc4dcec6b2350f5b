package headertank.calc.duty;

import java.util.List;

/**
 * Phases that follow each other, each at one operating point of the duty.
 *
 * @param startCoolantK coolant and oil temperature at the start [K]
 * @param phases in their order
 */
public record Schedule(double startCoolantK, List<Phase> phases) {

    public Schedule {
        phases = List.copyOf(phases);
        if (phases.isEmpty()) {
            throw new IllegalArgumentException("a schedule needs at least one phase");
        }
    }

    /** @return length of the whole schedule [s] */
    public double lengthS() {
        return phases.stream().mapToDouble(Phase::seconds).sum();
    }

    /**
     * A stretch of time at one operating point.
     *
     * @param pointId id of the operating point
     * @param seconds how long [s]
     */
    public record Phase(String pointId, double seconds) {
        public Phase {
            if (!(seconds > 0 && seconds <= 86400)) {
                throw new IllegalArgumentException("seconds = " + seconds + ": allowed is above 0 to 86400 s");
            }
        }
    }
}

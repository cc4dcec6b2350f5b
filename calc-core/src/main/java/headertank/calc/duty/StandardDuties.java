package headertank.calc.duty;

import headertank.calc.quantity.Physics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Street, track and drift with default figures. Road speeds, slopes, time shares and run lengths are modelling choices:
 * a logged lap or run of the car replaces them through a {@link DutySource} of the shop's own.
 */
public final class StandardDuties implements DutySource {

    private static final String SOURCE =
            "modelling choice; time shares and run lengths guessed, to be replaced by a log";

    /** Idle with accessories at 0.18 of rated speed is the state in a traffic jam or a queue. */
    private static final double IDLE_SPEED_SHARE = 0.18;

    /**
     * Street: motorway, a pass of 420 m of height, the exit, standing and creeping in a jam with the air conditioning on, and the
     * motorway again. Judged by its run, for no hill is without end, and by the jam, where a car may well stay.
     */
    public static final Duty STREET = new Duty(
            "street",
            "Street",
            List.of(
                    new OperatingPoint(
                            "jam",
                            "Idle in traffic on a hot day",
                            2,
                            0,
                            0,
                            new Demand.Idle(1500, 2500, IDLE_SPEED_SHARE),
                            0.10),
                    new OperatingPoint(
                            "standstill", "Standing still on a hot day", 0, 0, 0, new Demand.Idle(1000, 2500, 0), 0.10),
                    new OperatingPoint("hill", "Hill at low speed", 11, 0, 0, new Demand.Road(0.08, 3000, 0.45), 0.10),
                    new OperatingPoint("motorway", "Motorway", 36, 0, 0, new Demand.Road(0.01, 3000, 0.50), 0.10)),
            Optional.of(new Schedule(
                    Physics.kelvin(75),
                    List.of(
                            new Schedule.Phase("motorway", 600),
                            new Schedule.Phase("hill", 480),
                            new Schedule.Phase("standstill", 180),
                            new Schedule.Phase("jam", 300),
                            new Schedule.Phase("motorway", 600)))),
            SOURCE);

    /** Track: laps without end, judged at the steady state. */
    public static final Duty TRACK = new Duty(
            "track",
            "Track",
            List.of(new OperatingPoint(
                    "laps",
                    "Laps, sustained high load at speed",
                    42,
                    0,
                    0,
                    new Demand.Mix(
                            List.of(
                                    new Demand.Mode(0.45, 0.93, 0.88),
                                    new Demand.Mode(0.25, 0.30, 0.78),
                                    new Demand.Mode(0.30, 0.00, 0.68)),
                            0.80),
                    0.10)),
            Optional.empty(),
            SOURCE);

    /** Drift: runs with the car sideways and idling in the queue between them. */
    public static final Duty DRIFT = new Duty(
            "drift",
            "Drift",
            List.of(
                    new OperatingPoint(
                            "run",
                            "Run, sideways at low road speed",
                            22,
                            Math.toRadians(25),
                            0,
                            new Demand.Mix(
                                    List.of(
                                            new Demand.Mode(0.25, 0.95, 0.92),
                                            new Demand.Mode(0.40, 0.30, 0.80),
                                            new Demand.Mode(0.35, 0.00, 0.62)),
                                    0.80),
                            0.10),
                    new OperatingPoint(
                            "queue", "Idle in the queue", 0, 0, 0, new Demand.Idle(2500, 0, IDLE_SPEED_SHARE), 0.10)),
            Optional.of(heats(4, 45, 180)),
            SOURCE);

    private static Schedule heats(int runs, double runS, double queueS) {
        List<Schedule.Phase> phases = new ArrayList<>();
        phases.add(new Schedule.Phase("queue", queueS));
        for (int i = 0; i < runs; i++) {
            phases.add(new Schedule.Phase("run", runS));
            phases.add(new Schedule.Phase("queue", queueS));
        }
        return new Schedule(Physics.kelvin(85), phases);
    }

    @Override
    public String id() {
        return "standard-duties";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return SOURCE;
    }

    @Override
    public List<Duty> duties() {
        return List.of(STREET, TRACK, DRIFT);
    }
}

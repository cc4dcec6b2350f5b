package headertank.calc.duty;

import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.Range;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reduces a log of a lap or a run to a duty: stretches at idle, pulling hard, and going along, the driven ones by bands of road
 * speed. Stretches of one kind and band share an operating point, whose mix of modes carries their load.
 *
 * <p>The length of the schedule is that of the log to the last digit that a sum of doubles keeps. The time mean of the power
 * share is kept within {@link #POWER_TOLERANCE}: what idles or rolls with next to no power counts as none.
 *
 * <p>What is hard, how wide a band is and how short a stretch may be are modelling choices.
 */
public final class LoggedLap {

    /** How far the mean power share of the duty may be from that of the log [-]. */
    public static final double POWER_TOLERANCE = 0.02;

    /** Fewest samples that make a log. */
    public static final int FEWEST = 10;

    /** Most samples that are taken. */
    public static final int MOST = 200_000;

    /** Longest log: a day, like any schedule [s]. */
    public static final double LONGEST_S = 86_400;

    private static final Range SPEED = Range.of(0, 90);
    private static final Range ENGINE = Range.of(0, 1.2);
    private static final Range POWER = Range.of(0, 1);

    /** A stretch is at least this long unless the log is shorter [s]. */
    private static final double SHORTEST_S = 4;

    private static final String ENGINE_SPEED = "engineSpeedShare";

    private LoggedLap() {}

    /**
     * A line of the log; it holds until the next one.
     *
     * @param timeS time since any start, rising [s]
     * @param roadSpeedMPerS road speed, 0 to 90 [m/s]
     * @param engineSpeedShare engine speed over that of rated power, 0 to 1.2 [-]
     * @param powerShare brake power over rated power, 0 to 1 [-]
     */
    public record Sample(double timeS, double roadSpeedMPerS, double engineSpeedShare, double powerShare) {}

    /** What the car does at a point. */
    public enum Doing {
        OFF,
        IDLE,
        PULL,
        ALONG
    }

    /** Names the points of a duty, in the language of whoever looks it over. */
    @FunctionalInterface
    public interface PointNames {
        /**
         * @param doing what the car does there
         * @param meanSpeedMPerS its mean road speed [m/s]
         * @return the name of the point
         */
        String name(Doing doing, double meanSpeedMPerS);
    }

    /**
     * @param id id of the duty
     * @param label its name in plain words
     * @param names makes the names of its points
     * @param source where the log comes from
     * @param startCoolantK coolant at the start of the log [K]
     * @param log at least {@link #FEWEST} samples in the order of time
     * @return a duty with a schedule, judged by its run and by where it idles
     * @throws InputException with every fault, at most a hundred: sample, its quantity, value and what is allowed
     */
    public static Duty reduce(
            String id, String label, PointNames names, String source, double startCoolantK, List<Sample> log) {
        check(log);
        List<LogStretch> stretches = stretches(log);
        Map<String, List<LogStretch>> byPoint = new LinkedHashMap<>();
        List<Schedule.Phase> phases = new ArrayList<>();
        for (LogStretch s : stretches) {
            byPoint.computeIfAbsent(s.pointId(), k -> new ArrayList<>()).add(s);
            int last = phases.size() - 1;
            if (last >= 0 && phases.get(last).pointId().equals(s.pointId())) {
                phases.set(
                        last, new Schedule.Phase(s.pointId(), phases.get(last).seconds() + s.seconds()));
            } else {
                phases.add(new Schedule.Phase(s.pointId(), s.seconds()));
            }
        }
        List<OperatingPoint> points = byPoint.values().stream()
                .map(all -> LogPoint.of(all.get(0).kind(), all, names))
                .toList();
        if (points.stream().allMatch(OperatingPoint::engineOff)) {
            throw new InputException(List.of(InputProblem.of(
                    ENGINE_SPEED,
                    CsvText.word(0),
                    DutyInputText.AN_ENGINE_THAT_RUNS.with(),
                    InputProblem.Code.CONTRADICTION)));
        }
        return new Duty(id, label, points, Optional.of(new Schedule(startCoolantK, phases)), source);
    }

    /** A new stretch begins where the kind changes, but not before the one under way is long enough to be one. */
    private static List<LogStretch> stretches(List<Sample> log) {
        List<LogStretch> all = new ArrayList<>();
        LogStretch now = new LogStretch();
        for (int i = 0; i + 1 < log.size(); i++) {
            Sample s = log.get(i);
            if (now.seconds() >= SHORTEST_S && LogStretch.kind(s) != now.kind()) {
                all.add(now);
                now = new LogStretch();
            }
            now.add(s, log.get(i + 1).timeS() - s.timeS());
        }
        if (!all.isEmpty() && now.seconds() < SHORTEST_S) {
            all.get(all.size() - 1).add(now);
        } else {
            all.add(now);
        }
        return all;
    }

    private static void check(List<Sample> log) {
        List<InputProblem> problems = new ArrayList<>();
        if (log.size() < FEWEST || log.size() > MOST) {
            problems.add(InputProblem.of(
                    "samples",
                    CsvText.word(log.size()),
                    CsvColumn.allowed(Range.of(FEWEST, MOST)),
                    InputProblem.Code.OUT_OF_RANGE));
            throw new InputException(problems);
        }
        for (int i = 0; i < log.size() && problems.size() < 100; i++) {
            Sample s = log.get(i);
            inside(problems, i, "roadSpeedMPerS", s.roadSpeedMPerS(), SPEED);
            inside(problems, i, ENGINE_SPEED, s.engineSpeedShare(), ENGINE);
            inside(problems, i, "powerShare", s.powerShare(), POWER);
            if (i > 0 && !(s.timeS() > log.get(i - 1).timeS())) {
                problems.add(new InputProblem(
                        i + 1,
                        "timeS",
                        new MessageArgument.Text(String.valueOf(s.timeS())),
                        DutyInputText.ABOVE.with(CsvText.word(log.get(i - 1).timeS())),
                        InputProblem.Code.CONTRADICTION));
            }
        }
        double length = log.get(log.size() - 1).timeS() - log.get(0).timeS();
        if (problems.isEmpty() && !(length <= LONGEST_S)) {
            problems.add(InputProblem.of(
                    "timeS",
                    DutyInputText.IN_ALL.with(CsvText.word(length)),
                    DutyInputText.AT_MOST_IN_ALL.with(CsvText.word(LONGEST_S)),
                    InputProblem.Code.OUT_OF_RANGE));
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    private static void inside(List<InputProblem> problems, int i, String what, double value, Range allowed) {
        if (!allowed.contains(value)) {
            problems.add(new InputProblem(
                    i + 1,
                    what,
                    new MessageArgument.Text(String.valueOf(value)),
                    CsvColumn.allowed(allowed),
                    InputProblem.Code.OUT_OF_RANGE));
        }
    }
}

package headertank.app.duty;

import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Road speed and power share over the time of a schedule: geometry in pixels of the drawing, the words stay in the template.
 *
 * @param speed a line as pairs of coordinates
 * @param power lines; there is none where the power follows from the car
 * @param phases stretches with the letter of their point, empty where it would not fit
 */
record DutyChart(
        String speedUnit, String speed, List<String> power, List<Tick> speeds, List<Tick> times, List<Phase> phases) {

    static final double LEFT = 52;
    static final double RIGHT = 628;
    static final double SPEED_TOP = 34;
    static final double SPEED_BOTTOM = 110;
    static final double POWER_TOP = 136;
    static final double POWER_BOTTOM = 190;

    private static final double LETTER_PX = 13;
    private static final double LEAST_AXIS_M_PER_S = 60 / 3.6;
    private static final int MOST_TIMES = 8;
    private static final double[] TIME_STEPS_MIN = {0.5, 1, 2, 5, 10, 15, 30, 60, 120, 240};

    /** A mark on an axis. */
    record Tick(double at, String text) {}

    /** A stretch of time at one point. */
    record Phase(double x, double width, String letter, boolean shaded) {}

    static DutyChart of(Duty duty, UnitSystem system) {
        Schedule schedule = duty.schedule().orElseThrow();
        List<String> ids = duty.points().stream().map(OperatingPoint::id).toList();
        double length = schedule.lengthS();
        double fastest = duty.points().stream()
                .mapToDouble(OperatingPoint::roadSpeedMPerS)
                .reduce(LEAST_AXIS_M_PER_S, Math::max);
        StringBuilder speed = new StringBuilder();
        List<String> power = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        List<Phase> phases = new ArrayList<>();
        double t = 0;
        for (Schedule.Phase p : schedule.phases()) {
            OperatingPoint point = duty.point(p.pointId());
            double from = x(t, length);
            double to = x(t + p.seconds(), length);
            double y = between(point.roadSpeedMPerS() / fastest, SPEED_BOTTOM, SPEED_TOP);
            step(speed, from, to, y);
            double share = DutyView.powerShare(point.demand());
            if (Double.isNaN(share)) {
                keep(power, line);
            } else {
                step(line, from, to, between(share, POWER_BOTTOM, POWER_TOP));
            }
            int index = ids.indexOf(p.pointId());
            String letter = DutyView.letter(index);
            phases.add(new Phase(
                    tenth(from),
                    tenth(to - from),
                    to - from >= LETTER_PX * letter.length() ? letter : "",
                    index % 2 == 0));
            t += p.seconds();
        }
        keep(power, line);
        return new DutyChart(
                Dimension.SPEED.symbol(system),
                speed.toString().strip(),
                List.copyOf(power),
                List.of(
                        new Tick(SPEED_BOTTOM, Units.number(0, Dimension.SPEED, system)),
                        new Tick(SPEED_TOP, Units.number(fastest, Dimension.SPEED, system))),
                times(length),
                List.copyOf(phases));
    }

    private static List<Tick> times(double length) {
        double step = 60 * TIME_STEPS_MIN[TIME_STEPS_MIN.length - 1];
        for (int i = TIME_STEPS_MIN.length - 1; i >= 0 && length / (60 * TIME_STEPS_MIN[i]) <= MOST_TIMES; i--) {
            step = 60 * TIME_STEPS_MIN[i];
        }
        List<Tick> ticks = new ArrayList<>();
        for (double t = 0; t <= length; t += step) {
            double minutes = t / 60;
            ticks.add(new Tick(
                    tenth(x(t, length)),
                    minutes == Math.rint(minutes) ? String.valueOf((long) minutes) : String.valueOf(minutes)));
        }
        return ticks;
    }

    private static void keep(List<String> lines, StringBuilder line) {
        if (!line.isEmpty()) {
            lines.add(line.toString().strip());
            line.setLength(0);
        }
    }

    private static void step(StringBuilder line, double from, double to, double y) {
        line.append(String.format(Locale.ROOT, "%.1f,%.1f %.1f,%.1f ", from, y, to, y));
    }

    private static double x(double t, double length) {
        return between(t / length, LEFT, RIGHT);
    }

    private static double between(double share, double at0, double at1) {
        return at0 + share * (at1 - at0);
    }

    private static double tenth(double px) {
        return Math.rint(10 * px) / 10;
    }
}

package headertank.app.duty;

import headertank.app.chart.CurveChart;
import headertank.app.chart.CurveChart.Line;
import headertank.app.chart.CurveChart.Phase;
import headertank.app.chart.PanelDrawing;
import headertank.app.chart.Scale;
import headertank.app.chart.Ticks;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import java.util.ArrayList;
import java.util.List;

/** Draws a schedule: road speed and power share over time, each stretch with the letter of its point. */
final class DutyChart {

    private static final int WIDTH = 640;
    private static final double LEFT = 52;
    private static final double RIGHT = 592;
    private static final double TOP = 30;
    private static final double SPEED_TOP = 50;
    private static final double SPEED_BOTTOM = 130;
    private static final double POWER_TOP = 160;
    private static final double POWER_BOTTOM = 214;
    private static final double AXIS = 34;

    private static final double LETTER_PX = 13;
    private static final double LEAST_AXIS_M_PER_S = 60 / 3.6;

    private static final Line SPEED = new Line("#1d5a6b", 2, "none");
    private static final Line POWER = new Line("#7a4b00", 2, "7 2");

    private DutyChart() {}

    static CurveChart of(Duty duty, DutyText words, UnitSystem system) {
        Schedule schedule = duty.schedule().orElseThrow();
        double fastest = duty.points().stream()
                .mapToDouble(OperatingPoint::roadSpeedMPerS)
                .reduce(LEAST_AXIS_M_PER_S, Math::max);
        Scale x = new Scale(0, schedule.lengthS(), LEFT, RIGHT);
        Scale speed = new Scale(0, fastest, SPEED_BOTTOM, SPEED_TOP);
        Scale power = new Scale(0, 1, POWER_BOTTOM, POWER_TOP);
        PanelDrawing speeds = new PanelDrawing(
                        words.say("duties.chart.speed", Dimension.SPEED.symbol(system)), x, speed)
                .ticks(Ticks.of(speed, Dimension.SPEED, system, 20, 4));
        PanelDrawing powers = new PanelDrawing(words.say("duties.chart.power"), x, power)
                .ticks(Ticks.of(power, Dimension.FRACTION, system, 50, 2));
        steps(schedule, p -> duty.point(p).roadSpeedMPerS())
                .forEach(s -> speeds.curve("speed", "", SPEED, s.at(), s.values()));
        steps(schedule, p -> DutyView.powerShare(duty.point(p).demand()))
                .forEach(s -> powers.curve("power", "", POWER, s.at(), s.values()));
        return new CurveChart(
                WIDTH,
                (int) Math.ceil(POWER_BOTTOM + AXIS),
                LEFT,
                RIGHT,
                TOP,
                POWER_BOTTOM,
                List.of(speeds.draw(), powers.draw()),
                Ticks.minutes(x, 8),
                phases(duty, schedule, x));
    }

    /** Values that hold for stretches of time. */
    private record Steps(List<Double> at, List<Double> values) {}

    private interface Held {
        double at(String pointId);
    }

    /** One line for each stretch in which there is a value. */
    private static List<Steps> steps(Schedule schedule, Held held) {
        List<Steps> lines = new ArrayList<>();
        Steps line = new Steps(new ArrayList<>(), new ArrayList<>());
        double t = 0;
        for (Schedule.Phase p : schedule.phases()) {
            double value = held.at(p.pointId());
            if (Double.isNaN(value)) {
                line = keep(lines, line);
            } else {
                line.at().addAll(List.of(t, t + p.seconds()));
                line.values().addAll(List.of(value, value));
            }
            t += p.seconds();
        }
        keep(lines, line);
        return lines;
    }

    private static Steps keep(List<Steps> lines, Steps line) {
        if (line.at().isEmpty()) {
            return line;
        }
        lines.add(line);
        return new Steps(new ArrayList<>(), new ArrayList<>());
    }

    private static List<Phase> phases(Duty duty, Schedule schedule, Scale x) {
        List<String> ids = duty.points().stream().map(OperatingPoint::id).toList();
        List<Phase> phases = new ArrayList<>();
        double t = 0;
        for (Schedule.Phase p : schedule.phases()) {
            double from = x.at(t);
            double width = Math.rint(10 * (x.at(t + p.seconds()) - from)) / 10;
            int index = ids.indexOf(p.pointId());
            String letter = DutyView.letter(index);
            phases.add(new Phase(from, width, width >= LETTER_PX * letter.length() ? letter : "", index % 2 == 0));
            t += p.seconds();
        }
        return phases;
    }
}

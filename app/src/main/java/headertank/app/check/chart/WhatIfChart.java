package headertank.app.check.chart;

import headertank.app.chart.CurveChart;
import headertank.app.chart.CurveChart.Line;
import headertank.app.chart.CurveChart.Phase;
import headertank.app.chart.PanelDrawing;
import headertank.app.chart.Scale;
import headertank.app.chart.Ticks;
import headertank.app.check.figure.FigureText;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredRun;
import headertank.app.check.stored.WhatIf;
import headertank.app.check.stored.WhatIf.Course;
import headertank.app.check.stored.WhatIf.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Curves of the what-ifs of one duty over each other.
 *
 * @param runs coolant over the schedule, one curve for each way the car may be
 * @param needle what the gauge shows in the second half of half an hour at idle, on a switch and on a ramp
 * @param words the same in words
 */
public record WhatIfChart(CurveChart runs, Optional<CurveChart> needle, WhatIfWords words) {

    private static final double HEIGHT = 300;
    private static final double NEEDLE_HEIGHT = 150;
    private static final double AXIS = 34;
    private static final double NEEDLE_FROM_S = 900;

    /** How far beyond the limit the scale goes [K]. */
    private static final double BEYOND_K = 12;

    private static final Map<Kind, Line> LINES = new EnumMap<>(Map.of(
            Kind.AS_IS, new Line("#1c2226", 2.8, "none"),
            Kind.SWITCH, new Line("#7a4b00", 2, "8 4"),
            Kind.RAMP, new Line("#1d5a6b", 2.8, "none"),
            Kind.HOSE_SENSOR, new Line("#5a4a7a", 2, "2 3"),
            Kind.BLOCK_SENSOR, new Line("#5a4a7a", 2, "2 3"),
            Kind.ONE_FAN_OUT, new Line("#1c2226", 2.2, "14 4"),
            Kind.NEVER_START, new Line("#9b1c1c", 2.2, "14 3 2 3"),
            Kind.SET_5_LOWER, new Line("#1f6b3a", 1.8, "5 2 1 2"),
            Kind.SET_10_LOWER, new Line("#1f6b3a", 1.8, "1 4")));

    public static Optional<WhatIfChart> of(DutyResult duty, double limitK, FigureText shown) {
        if (duty.run().isEmpty() || duty.whatIfs().isEmpty()) {
            return Optional.empty();
        }
        StoredRun run = duty.run().get();
        Scale x = new Scale(0, Math.max(1, run.lengthS()), RunChart.LEFT, RunChart.RIGHT);
        CurveChart runs = chart(
                duty.whatIfs(),
                WhatIf::run,
                Course::coolantK,
                x,
                HEIGHT,
                limitK,
                shown,
                RunChart.phases(run.phases(), x, shown));
        return Optional.of(new WhatIfChart(runs, needle(duty, shown), WhatIfWords.of(duty, limitK, shown)));
    }

    private static Optional<CurveChart> needle(DutyResult duty, FigureText shown) {
        List<WhatIf> held = new ArrayList<>();
        for (Kind kind : List.of(Kind.SWITCH, Kind.RAMP)) {
            duty.whatIf(kind).filter(w -> w.stay().isPresent()).ifPresent(held::add);
        }
        if (held.size() < 2) {
            return Optional.empty();
        }
        double end = held.get(0).stay().get().timeS().stream()
                .mapToDouble(t -> t)
                .max()
                .orElse(2 * NEEDLE_FROM_S);
        Scale x = new Scale(NEEDLE_FROM_S, end, RunChart.LEFT, RunChart.RIGHT);
        return Optional.of(chart(
                held,
                w -> late(w.stay().orElseThrow()),
                Course::gaugeK,
                x,
                NEEDLE_HEIGHT,
                Double.NaN,
                shown,
                List.of()));
    }

    /** The second half of a stay. */
    private static Course late(Course all) {
        List<Double> times = new ArrayList<>();
        List<Double> coolant = new ArrayList<>();
        List<Double> gauge = new ArrayList<>();
        for (int i = 0; i < all.timeS().size(); i++) {
            boolean next = i + 1 < all.timeS().size() && all.timeS().get(i + 1) > NEEDLE_FROM_S;
            if (all.timeS().get(i) >= NEEDLE_FROM_S || next) {
                times.add(all.timeS().get(i));
                coolant.add(all.coolantK().get(i));
                gauge.add(all.gaugeK().get(i));
            }
        }
        return new Course(
                all.peakCoolantK(),
                all.peakCoolantAtS(),
                all.firstAboveLimitS(),
                all.secondsAboveLimit(),
                all.lowestBoilingMarginK(),
                all.swingK(),
                all.gaugeSwingK(),
                times,
                coolant,
                gauge);
    }

    private static CurveChart chart(
            List<WhatIf> rows,
            Function<WhatIf, Course> course,
            Function<Course, List<Double>> value,
            Scale x,
            double height,
            double limitK,
            FigureText shown,
            List<Phase> phases) {
        double top = RunChart.TOP + 20;
        boolean limited = !Double.isNaN(limitK);
        double hottest = limited ? limitK + BEYOND_K : Double.POSITIVE_INFINITY;
        List<Curve> curves = rows.stream()
                .map(w -> curve(w, course.apply(w).timeS(), value.apply(course.apply(w)), hottest, shown))
                .toList();
        List<List<Double>> values = curves.stream().map(Curve::values).toList();
        Scale y = limited
                ? RunChart.temperatureScale(top, top + height, values, limitK)
                : RunChart.temperatureScale(top, top + height, values);
        PanelDrawing panel = new PanelDrawing(shown.words("check.curve.temperatures", shown.degree()), x, y)
                .ticks(shown.temperatureTicks(y));
        if (limited) {
            panel.limit("coolant-limit", limitK, shown.words("check.curve.limit", RunChart.whole(limitK, shown)));
        }
        curves.forEach(c -> panel.curve(c.kind().name(), c.name(), LINES.get(c.kind()), c.times(), c.values()));
        return new CurveChart(
                RunChart.WIDTH,
                (int) Math.ceil(top + height + AXIS),
                RunChart.LEFT,
                RunChart.RIGHT,
                RunChart.TOP,
                top + height,
                List.of(panel.draw()),
                Ticks.minutes(x, RunChart.MOST_TIMES),
                phases);
    }

    /** A curve, cut off where it leaves the scale. */
    private record Curve(Kind kind, String name, List<Double> times, List<Double> values) {}

    private static Curve curve(WhatIf w, List<Double> times, List<Double> values, double hottestK, FigureText shown) {
        String name = shown.words("check.what-if.curve." + w.kind(), RunChart.whole(w.setK(), shown));
        for (int i = 1; i < values.size(); i++) {
            double before = values.get(i - 1);
            if (values.get(i) > hottestK && before <= hottestK) {
                double share = (hottestK - before) / (values.get(i) - before);
                List<Double> cutTimes = new ArrayList<>(times.subList(0, i));
                List<Double> cutValues = new ArrayList<>(values.subList(0, i));
                cutTimes.add(times.get(i - 1) + share * (times.get(i) - times.get(i - 1)));
                cutValues.add(hottestK);
                String peak = RunChart.rounded(Collections.max(values), shown);
                return new Curve(w.kind(), shown.words("check.what-if.curve.beyond", name, peak), cutTimes, cutValues);
            }
        }
        return new Curve(w.kind(), name, times, values);
    }
}

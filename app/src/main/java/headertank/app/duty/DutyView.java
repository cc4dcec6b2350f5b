package headertank.app.duty;

import headertank.app.chart.CurveChart;
import headertank.app.language.Dates;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A duty on the list.
 *
 * @param own its version when it is the shop's own
 * @param saved when it was saved, empty for an installed one
 * @param length of its schedule in words, empty when it has none
 * @param order its phases in words, empty when it has none
 */
record DutyView(
        String id,
        String label,
        String source,
        String judged,
        boolean active,
        boolean readable,
        boolean covered,
        Optional<DutyVersion> own,
        String saved,
        String length,
        List<Point> points,
        List<String> order,
        Optional<CurveChart> chart) {

    /** A point as a row: the letter that stands for it in the drawing, and its figures. */
    record Point(
            String letter, String label, String speed, String sideslip, String demand, String power, String time) {}

    static DutyView of(Duties.Listed listed, DutyText words, UnitSystem system, Dates dates) {
        Optional<Duty> duty = listed.duty();
        return new DutyView(
                listed.id(),
                duty.map(words::label).orElse(listed.id()),
                duty.map(words::source).orElse(""),
                duty.map(d -> words.say("duties.judged." + d.judged().name())).orElse(""),
                listed.active(),
                duty.isPresent(),
                listed.covered(),
                listed.own(),
                listed.own().map(v -> dates.when(v.savedAt())).orElse(""),
                duty.flatMap(Duty::schedule).map(s -> words.time(s.lengthS())).orElse(""),
                duty.map(d -> points(d, words, system)).orElse(List.of()),
                duty.map(d -> order(d, words)).orElse(List.of()),
                duty.filter(d -> d.schedule().isPresent()).map(d -> DutyChart.of(d, words, system)));
    }

    private static List<Point> points(Duty duty, DutyText words, UnitSystem system) {
        List<Point> rows = new ArrayList<>();
        for (OperatingPoint p : duty.points()) {
            double power = powerShare(p.demand());
            double seconds = duty.schedule()
                    .map(s -> s.phases().stream()
                            .filter(f -> f.pointId().equals(p.id()))
                            .mapToDouble(Schedule.Phase::seconds)
                            .sum())
                    .orElse(0.0);
            rows.add(new Point(
                    letter(rows.size()),
                    words.label(duty, p),
                    Units.show(p.roadSpeedMPerS(), Dimension.SPEED, system),
                    p.yawRad() == 0 ? "" : Units.show(p.yawRad(), Dimension.ANGLE, system),
                    words.demand(p, system),
                    Double.isNaN(power) ? words.say("duties.power.car") : words.share(power),
                    seconds == 0 ? "" : words.time(seconds)));
        }
        return rows;
    }

    private static List<String> order(Duty duty, DutyText words) {
        List<String> ids = duty.points().stream().map(OperatingPoint::id).toList();
        return duty.schedule()
                .map(s -> s.phases().stream()
                        .map(p -> letter(ids.indexOf(p.pointId())) + " " + words.time(p.seconds()))
                        .toList())
                .orElse(List.of());
    }

    /** Mean brake power over rated power; NaN where it follows from the car [-]. */
    static double powerShare(Demand demand) {
        if (demand instanceof Demand.Mix mix) {
            return mix.modes().stream()
                    .mapToDouble(m -> m.timeShare() * m.powerShare())
                    .sum();
        }
        return demand instanceof Demand.Road ? Double.NaN : 0;
    }

    /** A to Z, then AA and so on. */
    static String letter(int index) {
        return index < 26 ? String.valueOf((char) ('A' + index)) : letter(index / 26 - 1) + (char) ('A' + index % 26);
    }
}

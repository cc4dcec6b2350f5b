package headertank.calc.carspec;

import static headertank.calc.carspec.Build.number;
import static headertank.calc.carspec.Build.problem;

import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.PumpDrive;
import headertank.calc.engine.EngineClass;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.Map;

/** Fields of a build that are right by themselves but cannot both be right. */
final class Contradictions {

    /** Rows of a fan table closer than this are one [K]. */
    private static final double LEAST_ROW_STEP_K = 0.1;

    private static final String ROW = "fanControl.row";

    private Contradictions() {}

    /** Adds every contradiction of these entries. */
    static void find(Map<BuildField, Entry> entries, List<InputProblem> found) {
        if (entries.get(BuildField.ENGINE_SPEED) instanceof Stated rated
                && entries.get(BuildField.ENGINE_IDLE) instanceof Stated idle
                && idle.si() >= BuildField.IDLE_BELOW_SHARE * rated.si()) {
            String limit = number(BuildField.IDLE_BELOW_SHARE * rated.si());
            found.add(problem(
                    BuildField.ENGINE_IDLE,
                    number(idle.si()),
                    "less than " + BuildField.IDLE_BELOW_SHARE + " of the speed at rated power, here " + limit + " 1/s",
                    InputProblem.Code.CONTRADICTION));
        }
        if (entries.get(BuildField.FAN_CURRENT) instanceof Stated running
                && entries.get(BuildField.FAN_START_CURRENT) instanceof Stated start
                && start.si() < running.si()) {
            found.add(problem(
                    BuildField.FAN_START_CURRENT,
                    number(start.si()),
                    "at least the running current, here " + number(running.si()) + " A",
                    InputProblem.Code.CONTRADICTION));
        }
        if (entries.get(BuildField.CORE_DEPTH) instanceof Stated depth
                && entries.get(BuildField.TUBE_ROWS) instanceof Stated rows
                && rows.si() > 1
                && depth.si() / rows.si() < Build.THINNEST_ROW_M) {
            found.add(problem(
                    BuildField.TUBE_ROWS,
                    number(rows.si()),
                    "at most " + number(Math.max(1, Math.floor(depth.si() / Build.THINNEST_ROW_M)))
                            + " in a core this deep",
                    InputProblem.Code.CONTRADICTION));
        }
        if (entries.get(BuildField.FUEL) instanceof Chosen fuel
                && entries.get(BuildField.ENGINE_CLASS) instanceof Chosen engine
                && fuel.is(Fuel.DIESEL) != engine.is(EngineClass.DIESEL_TURBO)) {
            found.add(problem(
                    BuildField.FUEL,
                    fuel.token(),
                    engine.is(EngineClass.DIESEL_TURBO)
                            ? "DIESEL, for this kind of engine"
                            : "any but DIESEL, for this kind of engine",
                    InputProblem.Code.CONTRADICTION));
        }
        if (entries.get(BuildField.AMBIENT) instanceof Stated hot
                && entries.get(BuildField.LOWEST_AMBIENT) instanceof Stated cold
                && cold.si() > hot.si()) {
            found.add(problem(
                    BuildField.LOWEST_AMBIENT,
                    number(cold.si()),
                    "at most the hottest day, here " + number(hot.si()) + " K",
                    InputProblem.Code.CONTRADICTION));
        }
        if (entries.get(BuildField.PUMP_RUN_ON) instanceof Stated runOn
                && runOn.si() > 0
                && entries.get(BuildField.PUMP_DRIVE) instanceof Chosen drive
                && drive.is(PumpDrive.ENGINE)) {
            found.add(contradiction(
                    BuildField.PUMP_RUN_ON, number(runOn.si()), "0 or empty: a pump on the engine stands with it"));
        }
        if (entries.get(BuildField.OIL_THERMOSTAT_OPENING) instanceof Stated opening
                && entries.get(BuildField.OIL_THERMOSTAT_OPEN) instanceof Stated open
                && open.si() < opening.si() + 1) {
            found.add(contradiction(
                    BuildField.OIL_THERMOSTAT_OPEN,
                    number(open.si()),
                    "at least 1 K above its opening, here " + number(opening.si()) + " K"));
        }
        if (isOrMayBe(entries, FanControlKind.TWO_STEP)
                && entries.get(BuildField.CONTROL_LOW_SET) instanceof Stated low
                && entries.get(BuildField.CONTROL_SET) instanceof Stated full
                && low.si() > full.si()) {
            found.add(contradiction(
                    BuildField.CONTROL_LOW_SET,
                    number(low.si()),
                    "at most the set point of full speed, here " + number(full.si()) + " K"));
        }
        if (isOrMayBe(entries, FanControlKind.TABLE) && ControlTable.touched(entries)) {
            table(entries, found);
        }
    }

    private static void table(Map<BuildField, Entry> entries, List<InputProblem> found) {
        ControlTable.Row before = null;
        int complete = 0;
        for (ControlTable.Row row : ControlTable.ROWS) {
            if (!row.touched(entries)) {
                continue;
            }
            if (!row.complete(entries)) {
                boolean noDuty = entries.containsKey(row.temperature());
                found.add(contradiction(
                        noDuty ? row.duty() : row.temperature(), "", "both a temperature and a duty in a row"));
                continue;
            }
            complete++;
            if (before != null) {
                rising(entries, before.temperature(), row.temperature(), LEAST_ROW_STEP_K, " K", found);
                rising(entries, before.duty(), row.duty(), 0, "", found);
            }
            before = row;
        }
        if (complete == 1 && found.stream().noneMatch(p -> p.field().startsWith(ROW))) {
            BuildField next = ControlTable.ROWS.stream()
                    .filter(r -> !r.touched(entries))
                    .findFirst()
                    .orElseThrow()
                    .temperature();
            found.add(contradiction(next, "", "a temperature: a table has at least two rows"));
        }
    }

    private static void rising(
            Map<BuildField, Entry> entries,
            BuildField before,
            BuildField after,
            double least,
            String unit,
            List<InputProblem> found) {
        double was = ((Stated) entries.get(before)).si();
        double is = ((Stated) entries.get(after)).si();
        if (is < was + least) {
            found.add(contradiction(
                    after, number(is), "at least " + number(was + least) + unit + ", after " + before.key()));
        }
    }

    /** Whether the fans are switched so, or nobody said how. */
    private static boolean isOrMayBe(Map<BuildField, Entry> entries, FanControlKind kind) {
        return !(entries.get(BuildField.CONTROL_KIND) instanceof Chosen c) || c.is(kind);
    }

    private static InputProblem contradiction(BuildField field, String value, String allowed) {
        return problem(field, value, allowed, InputProblem.Code.CONTRADICTION);
    }
}

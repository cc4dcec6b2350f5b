package headertank.calc.carspec;

import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.PumpDrive;
import headertank.calc.engine.EngineClass;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.InputText;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.SiFigure;
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
            found.add(contradiction(
                    BuildField.ENGINE_IDLE,
                    idle,
                    ContradictionText.IDLES_TOO_FAST.with(
                            SiFigure.share(BuildField.IDLE_BELOW_SHARE),
                            value(BuildField.ENGINE_IDLE, BuildField.IDLE_BELOW_SHARE * rated.si()))));
        }
        if (entries.get(BuildField.FAN_CURRENT) instanceof Stated running
                && entries.get(BuildField.FAN_START_CURRENT) instanceof Stated start
                && start.si() < running.si()) {
            found.add(contradiction(
                    BuildField.FAN_START_CURRENT,
                    start,
                    ContradictionText.STARTS_BELOW_RUNNING.with(value(BuildField.FAN_CURRENT, running.si()))));
        }
        if (entries.get(BuildField.CORE_DEPTH) instanceof Stated depth
                && entries.get(BuildField.TUBE_ROWS) instanceof Stated rows
                && rows.si() > 1
                && depth.si() / rows.si() < Build.THINNEST_ROW_M) {
            double most = Math.max(1, Math.floor(depth.si() / Build.THINNEST_ROW_M));
            found.add(contradiction(
                    BuildField.TUBE_ROWS,
                    rows,
                    ContradictionText.TOO_MANY_ROWS.with(value(BuildField.TUBE_ROWS, most))));
        }
        if (entries.get(BuildField.FUEL) instanceof Chosen fuel
                && entries.get(BuildField.ENGINE_CLASS) instanceof Chosen engine
                && fuel.is(Fuel.DIESEL) != engine.is(EngineClass.DIESEL_TURBO)) {
            found.add(contradiction(
                    BuildField.FUEL,
                    fuel,
                    engine.is(EngineClass.DIESEL_TURBO)
                            ? InputText.DIESEL_NEEDED.with()
                            : InputText.DIESEL_REFUSED.with()));
        }
        if (entries.get(BuildField.AMBIENT) instanceof Stated hot
                && entries.get(BuildField.LOWEST_AMBIENT) instanceof Stated cold
                && cold.si() > hot.si()) {
            found.add(contradiction(
                    BuildField.LOWEST_AMBIENT,
                    cold,
                    ContradictionText.COLDEST_DAY_IS_HOTTER.with(value(BuildField.AMBIENT, hot.si()))));
        }
        if (entries.get(BuildField.PUMP_RUN_ON) instanceof Stated runOn
                && runOn.si() > 0
                && entries.get(BuildField.PUMP_DRIVE) instanceof Chosen drive
                && drive.is(PumpDrive.ENGINE)) {
            found.add(contradiction(BuildField.PUMP_RUN_ON, runOn, ContradictionText.PUMP_ON_ENGINE.with()));
        }
        if (entries.get(BuildField.OIL_THERMOSTAT_OPENING) instanceof Stated opening
                && entries.get(BuildField.OIL_THERMOSTAT_OPEN) instanceof Stated open
                && open.si() < opening.si() + 1) {
            found.add(contradiction(
                    BuildField.OIL_THERMOSTAT_OPEN,
                    open,
                    ContradictionText.OIL_THERMOSTAT_OPENS_BACKWARDS.with(
                            value(BuildField.OIL_THERMOSTAT_OPEN, opening.si() + 1))));
        }
        if (isOrMayBe(entries, FanControlKind.TWO_STEP)
                && entries.get(BuildField.CONTROL_LOW_SET) instanceof Stated low
                && entries.get(BuildField.CONTROL_SET) instanceof Stated full
                && low.si() > full.si()) {
            found.add(contradiction(
                    BuildField.CONTROL_LOW_SET,
                    low,
                    ContradictionText.LOW_STEP_ABOVE_FULL.with(value(BuildField.CONTROL_SET, full.si()))));
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
                found.add(missing(noDuty ? row.duty() : row.temperature(), ContradictionText.TABLE_ROW_IS_HALF.with()));
                continue;
            }
            complete++;
            if (before != null) {
                rising(
                        entries,
                        before.temperature(),
                        row.temperature(),
                        LEAST_ROW_STEP_K,
                        ContradictionText.TABLE_TEMPERATURE_FALLS,
                        found);
                rising(entries, before.duty(), row.duty(), 0, ContradictionText.TABLE_DUTY_FALLS, found);
            }
            before = row;
        }
        if (complete == 1 && found.stream().noneMatch(p -> p.field().startsWith(ROW))) {
            BuildField next = ControlTable.ROWS.stream()
                    .filter(r -> !r.touched(entries))
                    .findFirst()
                    .orElseThrow()
                    .temperature();
            found.add(missing(next, ContradictionText.TABLE_OF_ONE_ROW.with()));
        }
    }

    private static void rising(
            Map<BuildField, Entry> entries,
            BuildField before,
            BuildField after,
            double least,
            ContradictionText falls,
            List<InputProblem> found) {
        double was = ((Stated) entries.get(before)).si();
        Entry is = entries.get(after);
        if (((Stated) is).si() < was + least) {
            found.add(contradiction(
                    after, is, falls.with(value(after, was + least), new MessageArgument.FieldName(before.key()))));
        }
    }

    /** Whether the fans are switched so, or nobody said how. */
    private static boolean isOrMayBe(Map<BuildField, Entry> entries, FanControlKind kind) {
        return !(entries.get(BuildField.CONTROL_KIND) instanceof Chosen c) || c.is(kind);
    }

    private static MessageArgument value(BuildField field, double si) {
        return new MessageArgument.FieldValue(field.key(), si);
    }

    private static InputProblem missing(BuildField field, Message why) {
        return InputProblem.of(field.key(), Message.NONE, why, InputProblem.Code.CONTRADICTION);
    }

    private static InputProblem contradiction(BuildField field, Entry stated, Message why) {
        return InputProblem.of(field.key(), Build.value(field, stated), why, InputProblem.Code.CONTRADICTION);
    }
}

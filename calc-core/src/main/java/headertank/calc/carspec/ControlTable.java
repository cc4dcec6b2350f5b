package headertank.calc.carspec;

import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.Map;

/** The fields of a build that hold an engine controller's table of fan duty against temperature. */
public final class ControlTable {

    /** The rows in their order; those that are not needed stay empty. */
    public static final List<Row> ROWS = List.of(
            new Row(BuildField.CONTROL_ROW_1_K, BuildField.CONTROL_ROW_1_DUTY),
            new Row(BuildField.CONTROL_ROW_2_K, BuildField.CONTROL_ROW_2_DUTY),
            new Row(BuildField.CONTROL_ROW_3_K, BuildField.CONTROL_ROW_3_DUTY),
            new Row(BuildField.CONTROL_ROW_4_K, BuildField.CONTROL_ROW_4_DUTY),
            new Row(BuildField.CONTROL_ROW_5_K, BuildField.CONTROL_ROW_5_DUTY));

    private ControlTable() {}

    /**
     * One row.
     *
     * @param temperature field of the sensed temperature [K]
     * @param duty field of the duty there [-]
     */
    public record Row(BuildField temperature, BuildField duty) {

        boolean touched(Map<BuildField, Entry> entries) {
            return entries.containsKey(temperature) || entries.containsKey(duty);
        }

        boolean complete(Map<BuildField, Entry> entries) {
            return entries.get(temperature) instanceof Stated && entries.get(duty) instanceof Stated;
        }
    }

    /** @return whether anything of a table is stated */
    static boolean touched(Map<BuildField, Entry> entries) {
        return ROWS.stream().anyMatch(r -> r.touched(entries));
    }
}

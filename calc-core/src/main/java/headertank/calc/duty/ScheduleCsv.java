package headertank.calc.duty;

import headertank.calc.quantity.InputException;
import headertank.calc.quantity.Physics;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/**
 * A duty as comma-separated text, for owners who write their own or log one.
 *
 * <p>Lines that begin with {@code #} and hold {@code name: value} describe the duty: {@code id}, {@code label}, {@code
 * source}, {@code start_coolant_C} (coolant and oil at the start, deg C) and {@code judged} (STEADY, RUN_AND_IDLE or BOTH;
 * without it BOTH when there are phases, else STEADY); other lines with {@code #} are remarks. Then a header with the names
 * of the columns in any order, then a line per phase. {@code point} names the operating point; the first line that names
 * one says what it is, further lines may leave everything else but {@code duration_s} empty, or must repeat it. A line
 * without a name of a point gets one, the same for the same content. A line without {@code duration_s} only says what a
 * point is.
 *
 * <table>
 * <caption>Columns</caption>
 * <tr><td>point</td><td>name of the operating point</td></tr>
 * <tr><td>label</td><td>plain text; else the name</td></tr>
 * <tr><td>duration_s</td><td>length of the phase [s]</td></tr>
 * <tr><td>road_speed_km_per_h</td><td>road speed, 0 to 324; empty 0 [km/h]</td></tr>
 * <tr><td>sideslip_deg</td><td>sideslip, -90 to 90; empty 0 [degrees]</td></tr>
 * <tr><td>ambient_offset_K</td><td>air hotter than on the design day by, -40 to 40; empty 0 [K]</td></tr>
 * <tr><td>demand</td><td>idle, road, mix or engine_off</td></tr>
 * <tr><td>engine_speed_share</td><td>engine speed over that of rated power, 0 to 1.2; empty 0 = idle speed; needed for road and
 * mix [-]</td></tr>
 * <tr><td>accessories_W</td><td>idle and road: brake power for accessories; empty 0 [W]</td></tr>
 * <tr><td>air_conditioning_W</td><td>idle: more where the car has it; empty 0 [W]</td></tr>
 * <tr><td>slope</td><td>road: rise over run; empty 0 [-]</td></tr>
 * <tr><td>modes</td><td>mix: time:power:speed, shares each, parted by spaces [-]</td></tr>
 * <tr><td>pump_run_on_share</td><td>engine_off: speed of an electric pump; empty 0 [-]</td></tr>
 * <tr><td>fans_run_on</td><td>engine_off: yes when electric fans follow their control; empty no</td></tr>
 * <tr><td>load_sigma_share</td><td>one standard deviation of the heat; empty 0.1 [-]</td></tr>
 * </table>
 *
 * <p>Pure: text in, duty out and back.
 */
public final class ScheduleCsv {

    /** Most lines that are read. */
    public static final int MOST_LINES = 20_000;

    private ScheduleCsv() {}

    /**
     * @param text the whole text
     * @return the duty
     * @throws InputException with every fault: line, column, value and what is allowed
     */
    public static Duty parse(String text) {
        return new CsvDutyReader().read(text);
    }

    /** @return the duty as text that {@link #parse} reads back */
    public static String write(Duty duty) {
        StringBuilder out = new StringBuilder();
        remark(out, "id", duty.id());
        remark(out, "label", duty.label());
        remark(out, "source", duty.source());
        duty.schedule()
                .ifPresent(s -> remark(out, "start_coolant_C", CsvColumn.plain(Physics.celsius(s.startCoolantK()))));
        remark(out, "judged", duty.judged().name());
        StringJoiner header = new StringJoiner(",");
        for (CsvColumn c : CsvColumn.values()) {
            header.add(c.key);
        }
        out.append(header).append('\n');
        for (OperatingPoint p : duty.points()) {
            line(out, p, "");
        }
        duty.schedule().ifPresent(s -> s.phases().forEach(phase -> {
            String[] cells = new String[CsvColumn.values().length];
            java.util.Arrays.fill(cells, "");
            cells[CsvColumn.POINT.ordinal()] = phase.pointId();
            cells[CsvColumn.DURATION.ordinal()] = CsvColumn.plain(phase.seconds());
            out.append(String.join(",", cells)).append('\n');
        }));
        return out.toString();
    }

    private static void remark(StringBuilder out, String name, String value) {
        out.append("# ")
                .append(name)
                .append(": ")
                .append(value.replaceAll("[\r\n]+", " "))
                .append('\n');
    }

    private static void line(StringBuilder out, OperatingPoint p, String duration) {
        String[] cells = new String[CsvColumn.values().length];
        java.util.Arrays.fill(cells, "");
        put(cells, CsvColumn.POINT, p.id());
        put(cells, CsvColumn.LABEL, quoted(p.label().replaceAll("[\r\n]+", " ")));
        put(cells, CsvColumn.DURATION, duration);
        put(cells, CsvColumn.ROAD_SPEED, CsvColumn.plain(3.6 * p.roadSpeedMPerS()));
        put(cells, CsvColumn.SIDESLIP, CsvColumn.plain(Math.toDegrees(p.yawRad())));
        put(cells, CsvColumn.AMBIENT_OFFSET, CsvColumn.plain(p.ambientOffsetK()));
        put(cells, CsvColumn.LOAD_SIGMA, CsvColumn.plain(p.loadSigma()));
        if (p.demand() instanceof Demand.EngineOff d) {
            put(cells, CsvColumn.DEMAND, "engine_off");
            put(cells, CsvColumn.PUMP_RUN_ON, CsvColumn.plain(d.pumpRunOnShare()));
            put(cells, CsvColumn.FANS_RUN_ON, d.fansRunOn() ? "yes" : "no");
        } else {
            put(cells, CsvColumn.ENGINE_SPEED, CsvColumn.plain(p.demand().engineSpeedShare()));
        }
        if (p.demand() instanceof Demand.Idle d) {
            put(cells, CsvColumn.DEMAND, "idle");
            put(cells, CsvColumn.ACCESSORIES, CsvColumn.plain(d.accessoriesW()));
            put(cells, CsvColumn.AIR_CONDITIONING, CsvColumn.plain(d.airConditioningW()));
        } else if (p.demand() instanceof Demand.Road d) {
            put(cells, CsvColumn.DEMAND, "road");
            put(cells, CsvColumn.ACCESSORIES, CsvColumn.plain(d.accessoriesW()));
            put(cells, CsvColumn.SLOPE, CsvColumn.plain(d.slope()));
        } else if (p.demand() instanceof Demand.Mix d) {
            put(cells, CsvColumn.DEMAND, "mix");
            put(cells, CsvColumn.MODES, modes(d.modes()));
        }
        out.append(String.join(",", cells)).append('\n');
    }

    private static String quoted(String cell) {
        return cell.contains(",") || cell.contains("\"") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    private static String modes(List<Demand.Mode> modes) {
        StringJoiner text = new StringJoiner(" ");
        for (Demand.Mode m : modes) {
            text.add(String.format(
                    Locale.ROOT,
                    "%s:%s:%s",
                    CsvColumn.plain(m.timeShare()),
                    CsvColumn.plain(m.powerShare()),
                    CsvColumn.plain(m.speedShare())));
        }
        return text.toString();
    }

    private static void put(String[] cells, CsvColumn column, String value) {
        cells[column.ordinal()] = value;
    }
}

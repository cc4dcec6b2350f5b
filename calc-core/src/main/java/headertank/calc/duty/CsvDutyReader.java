package headertank.calc.duty;

import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Range;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads one duty and collects every fault on the way. */
final class CsvDutyReader {

    private static final Range START_C = Range.of(-40, 130);
    private static final int MOST_FAULTS = 200;

    /** Longest schedule that is read: one day [s]. */
    private static final double LONGEST_S = 86400;

    private final List<InputProblem> problems = new ArrayList<>();
    private final Map<String, String> about = new HashMap<>();
    private final Map<String, Integer> aboutLine = new HashMap<>();
    private final Map<String, OperatingPoint> points = new LinkedHashMap<>();
    private final Map<OperatingPoint, String> named = new HashMap<>();
    private final Set<String> faulty = new HashSet<>();
    private final List<Schedule.Phase> phases = new ArrayList<>();
    private final Map<CsvColumn, Integer> columns = new EnumMap<>(CsvColumn.class);
    private double lengthS;

    Duty read(String text) {
        List<CsvText.Line> lines = CsvText.lines(text);
        boolean header = false;
        int read = 0;
        for (CsvText.Line line : lines) {
            if (line.comment()) {
                remark(line);
            } else if (line.broken()) {
                fault(
                        line.number(),
                        "-",
                        "",
                        "quotes that end where the cell ends, inner ones doubled",
                        InputProblem.Code.NOT_UNDERSTOOD);
                header = true;
            } else if (!header) {
                header(line);
                header = true;
            } else if (++read > ScheduleCsv.MOST_LINES) {
                fault(
                        line.number(),
                        "-",
                        "",
                        "at most " + ScheduleCsv.MOST_LINES + " lines",
                        InputProblem.Code.OUT_OF_RANGE);
                break;
            } else if (!columns.isEmpty()) {
                row(line);
            }
        }
        if (!header) {
            fault(1, "header", "", "a line with the names of the columns", InputProblem.Code.MISSING);
        } else if (points.isEmpty() && problems.isEmpty()) {
            fault(lines.size() + 1, "point", "", "at least one line below the header", InputProblem.Code.MISSING);
        }
        return duty();
    }

    private Duty duty() {
        String id = about("id", "");
        if (!id.matches("[A-Za-z0-9_-]{1,60}")) {
            fault(
                    aboutLine.getOrDefault("id", 1),
                    "# id",
                    id,
                    "1 to 60 letters, digits, - and _",
                    id.isEmpty() ? InputProblem.Code.MISSING : InputProblem.Code.NOT_UNDERSTOOD);
        }
        Optional<Schedule> schedule = schedule();
        Duty.Judged judged = judged(!phases.isEmpty());
        if (points.values().stream().allMatch(OperatingPoint::engineOff) && !points.isEmpty()) {
            fault(1, "demand", "engine_off", "at least one point with the engine on", InputProblem.Code.CONTRADICTION);
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return new Duty(
                id, about("label", id), List.copyOf(points.values()), schedule, about("source", "not stated"), judged);
    }

    private Optional<Schedule> schedule() {
        String start = about("start_coolant_C", "");
        double celsius = number(aboutLine.getOrDefault("start_coolant_C", 1), "# start_coolant_C", start, START_C, 20);
        return phases.isEmpty() ? Optional.empty() : Optional.of(new Schedule(Physics.kelvin(celsius), phases));
    }

    private Duty.Judged judged(boolean run) {
        String word = about("judged", run ? "BOTH" : "STEADY");
        for (Duty.Judged j : Duty.Judged.values()) {
            if (j.name().equals(word)) {
                if (!run && j != Duty.Judged.STEADY) {
                    fault(
                            aboutLine.get("judged"),
                            "# judged",
                            word,
                            "STEADY when no line has a duration_s",
                            InputProblem.Code.CONTRADICTION);
                }
                return run ? j : Duty.Judged.STEADY;
            }
        }
        fault(
                aboutLine.get("judged"),
                "# judged",
                word,
                "STEADY, RUN_AND_IDLE or BOTH",
                InputProblem.Code.NOT_UNDERSTOOD);
        return Duty.Judged.STEADY;
    }

    private void remark(CsvText.Line line) {
        String text = line.cells().get(0).substring(1).trim();
        int colon = text.indexOf(':');
        if (colon > 0) {
            String name = text.substring(0, colon).trim();
            about.putIfAbsent(name, text.substring(colon + 1).trim());
            aboutLine.putIfAbsent(name, line.number());
        }
    }

    private String about(String name, String otherwise) {
        String value = about.getOrDefault(name, "");
        return value.isEmpty() ? otherwise : value;
    }

    private void header(CsvText.Line line) {
        for (int i = 0; i < line.cells().size(); i++) {
            String name = line.cells().get(i);
            CsvColumn column = CsvColumn.of(name);
            if (column == null) {
                StringBuilder all = new StringBuilder();
                for (CsvColumn c : CsvColumn.values()) {
                    all.append(all.isEmpty() ? "" : ", ").append(c.key);
                }
                fault(line.number(), "header", name, all.toString(), InputProblem.Code.NOT_UNDERSTOOD);
            } else if (columns.putIfAbsent(column, i) != null) {
                fault(line.number(), "header", name, "each column once", InputProblem.Code.CONTRADICTION);
            }
        }
        if (!columns.containsKey(CsvColumn.DEMAND)) {
            fault(line.number(), "header", "", "a column demand", InputProblem.Code.MISSING);
        }
    }

    private void row(CsvText.Line line) {
        int faults = problems.size();
        if (line.cells().size() > columns.size() && line.cells().size() > 1 + lastColumn()) {
            fault(
                    line.number(),
                    "-",
                    line.cells().size() + " cells",
                    "at most " + (1 + lastColumn()) + " cells, as in the header",
                    InputProblem.Code.NOT_UNDERSTOOD);
            return;
        }
        CsvRow row = new CsvRow(this, line, columns);
        String name = row.text(CsvColumn.POINT);
        if (!name.isEmpty() && !name.matches("[A-Za-z0-9_-]{1,60}")) {
            row.fault(CsvColumn.POINT, InputProblem.Code.NOT_UNDERSTOOD);
        }
        double seconds = row.number(CsvColumn.DURATION, Double.NaN);
        OperatingPoint known = points.get(name);
        boolean says = row.saysMore();
        String id = name;
        if (known == null && !says && faulty.contains(name)) {
            return;
        }
        if (known == null || says) {
            OperatingPoint said = row.point(name);
            if (said == null || problems.size() > faults) {
                faulty.add(name);
                return;
            }
            if (known != null && !said.equals(known) && !said.equals(relabelled(said, known))) {
                row.fault(
                        CsvColumn.POINT,
                        name,
                        "the same content as where " + name + " first stands",
                        InputProblem.Code.CONTRADICTION);
                return;
            }
            id = known == null ? keep(said, name) : name;
        }
        if (seconds == seconds && problems.size() == faults) {
            phases.add(new Schedule.Phase(id, seconds));
            lengthS += seconds;
            if (lengthS > LONGEST_S && lengthS - seconds <= LONGEST_S) {
                row.fault(
                        CsvColumn.DURATION,
                        CsvColumn.plain(lengthS) + " in all",
                        "at most " + CsvColumn.plain(LONGEST_S) + " in all",
                        InputProblem.Code.OUT_OF_RANGE);
            }
        }
    }

    private int lastColumn() {
        return columns.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    /** @return the known point when they differ in nothing but a label that the line leaves out */
    private static OperatingPoint relabelled(OperatingPoint said, OperatingPoint known) {
        return said.label().equals(said.id()) ? CsvRow.labelled(known, said.id()) : known;
    }

    private String keep(OperatingPoint said, String name) {
        if (name.isEmpty()) {
            String same = named.get(said);
            if (same != null) {
                return same;
            }
            int n = named.size() + 1;
            while (points.containsKey("point-" + n)) {
                n++;
            }
            String id = "point-" + n;
            named.put(said, id);
            points.put(id, CsvRow.named(said, id));
            return id;
        }
        points.put(name, said);
        return name;
    }

    double number(int line, String column, String text, Range range, double otherwise) {
        if (text.isEmpty()) {
            return otherwise;
        }
        String allowed = CsvColumn.plain(range.min()) + " to " + CsvColumn.plain(range.max());
        if (!text.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?")) {
            fault(line, column, text, allowed, InputProblem.Code.NOT_UNDERSTOOD);
            return otherwise;
        }
        double value = Double.parseDouble(text);
        if (!range.contains(value)) {
            fault(line, column, text, allowed, InputProblem.Code.OUT_OF_RANGE);
            return otherwise;
        }
        return value;
    }

    void fault(int line, String column, String value, String allowed, InputProblem.Code code) {
        if (problems.size() < MOST_FAULTS) {
            problems.add(new InputProblem("line " + line + ", " + column, value, allowed, code));
        }
    }
}

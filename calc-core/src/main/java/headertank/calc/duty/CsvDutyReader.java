package headertank.calc.duty;

import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads one duty and collects every fault on the way. */
final class CsvDutyReader {

    private static final Range START_C = Range.of(-40, 130);
    private static final int MOST_FAULTS = 200;

    /** Longest name of a duty or a point. */
    static final int LONGEST_NAME = 60;

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]{1," + LONGEST_NAME + "}");

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
                fault(line.number(), "-", "", DutyInputText.QUOTES.with(), InputProblem.Code.NOT_UNDERSTOOD);
                header = true;
            } else if (!header) {
                header(line);
                header = true;
            } else if (++read > ScheduleCsv.MOST_LINES) {
                fault(
                        line.number(),
                        "-",
                        "",
                        DutyInputText.AT_MOST_LINES.with(CsvText.word(ScheduleCsv.MOST_LINES)),
                        InputProblem.Code.OUT_OF_RANGE);
                break;
            } else if (!columns.isEmpty()) {
                row(line);
            }
        }
        if (!header) {
            fault(1, "header", "", DutyInputText.A_HEADER.with(), InputProblem.Code.MISSING);
        } else if (points.isEmpty() && problems.isEmpty()) {
            fault(lines.size() + 1, "point", "", DutyInputText.LINE_BELOW_HEADER.with(), InputProblem.Code.MISSING);
        }
        return duty();
    }

    private Duty duty() {
        String id = about("id", "");
        if (!NAME.matcher(id).matches()) {
            fault(
                    aboutLine.getOrDefault("id", 1),
                    "# id",
                    id,
                    CsvColumn.POINT.allowed,
                    id.isEmpty() ? InputProblem.Code.MISSING : InputProblem.Code.NOT_UNDERSTOOD);
        }
        Optional<Schedule> schedule = schedule();
        Duty.Judged judged = judged(!phases.isEmpty());
        if (points.values().stream().allMatch(OperatingPoint::engineOff) && !points.isEmpty()) {
            fault(1, "demand", "engine_off", DutyInputText.ENGINE_ON_SOMEWHERE.with(), InputProblem.Code.CONTRADICTION);
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
                            DutyInputText.STEADY_WITHOUT_DURATIONS.with(),
                            InputProblem.Code.CONTRADICTION);
                }
                return run ? j : Duty.Judged.STEADY;
            }
        }
        fault(
                aboutLine.get("judged"),
                "# judged",
                word,
                DutyInputText.ONE_OF.with(CsvText.word("STEADY, RUN_AND_IDLE, BOTH")),
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
                String all = Arrays.stream(CsvColumn.values()).map(c -> c.key).collect(Collectors.joining(", "));
                fault(
                        line.number(),
                        "header",
                        name,
                        DutyInputText.COLUMNS.with(CsvText.word(all)),
                        InputProblem.Code.NOT_UNDERSTOOD);
            } else if (columns.putIfAbsent(column, i) != null) {
                fault(
                        line.number(),
                        "header",
                        name,
                        DutyInputText.EACH_COLUMN_ONCE.with(),
                        InputProblem.Code.CONTRADICTION);
            }
        }
        if (!columns.containsKey(CsvColumn.DEMAND)) {
            fault(
                    line.number(),
                    "header",
                    "",
                    DutyInputText.A_COLUMN.with(CsvText.word(CsvColumn.DEMAND.key)),
                    InputProblem.Code.MISSING);
        }
    }

    private void row(CsvText.Line line) {
        int faults = problems.size();
        if (line.cells().size() > columns.size() && line.cells().size() > 1 + lastColumn()) {
            fault(
                    line.number(),
                    "-",
                    DutyInputText.CELLS.with(CsvText.word(line.cells().size())),
                    DutyInputText.AT_MOST_CELLS.with(CsvText.word(1 + lastColumn())),
                    InputProblem.Code.NOT_UNDERSTOOD);
            return;
        }
        CsvRow row = new CsvRow(this, line, columns);
        String name = row.text(CsvColumn.POINT);
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
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
                        CsvText.word(name),
                        DutyInputText.SAME_AS_BEFORE.with(CsvText.word(name)),
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
                        DutyInputText.IN_ALL.with(CsvText.word(lengthS)),
                        DutyInputText.AT_MOST_IN_ALL.with(CsvText.word(LONGEST_S)),
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
        Message allowed = CsvColumn.allowed(range);
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

    private void fault(int line, String column, String value, Message allowed, InputProblem.Code code) {
        fault(line, column, CsvText.word(value), allowed, code);
    }

    void fault(int line, String column, MessageArgument value, Message allowed, InputProblem.Code code) {
        if (problems.size() < MOST_FAULTS) {
            problems.add(new InputProblem(line, column, value, allowed, code));
        }
    }
}

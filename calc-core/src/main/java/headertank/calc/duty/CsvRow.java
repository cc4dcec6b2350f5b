package headertank.calc.duty;

import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One line below the header. */
final class CsvRow {

    private static final double USUAL_SIGMA = 0.1;

    private final CsvDutyReader reader;
    private final CsvText.Line line;
    private final Map<CsvColumn, Integer> columns;

    CsvRow(CsvDutyReader reader, CsvText.Line line, Map<CsvColumn, Integer> columns) {
        this.reader = reader;
        this.line = line;
        this.columns = columns;
    }

    String text(CsvColumn column) {
        Integer i = columns.get(column);
        return i == null || i >= line.cells().size() ? "" : line.cells().get(i);
    }

    double number(CsvColumn column, double otherwise) {
        return reader.number(line.number(), column.key, text(column), column.range, otherwise);
    }

    void fault(CsvColumn column, InputProblem.Code code) {
        fault(column, CsvText.word(text(column)), column.allowed, code);
    }

    void fault(CsvColumn column, MessageArgument value, Message allowed, InputProblem.Code code) {
        reader.fault(line.number(), column.key, value, allowed, code);
    }

    /** @return whether the line says more than a name and a duration */
    boolean saysMore() {
        for (CsvColumn c : CsvColumn.values()) {
            if (c != CsvColumn.POINT && c != CsvColumn.DURATION && !text(c).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** @return the operating point that the line describes; {@code null} with a fault when it describes none */
    OperatingPoint point(String id) {
        Demand demand = demand();
        String label = text(CsvColumn.LABEL);
        double speed = number(CsvColumn.ROAD_SPEED, 0) / 3.6;
        double yaw = Math.toRadians(number(CsvColumn.SIDESLIP, 0));
        double offset = number(CsvColumn.AMBIENT_OFFSET, 0);
        double sigma = number(CsvColumn.LOAD_SIGMA, USUAL_SIGMA);
        return demand == null
                ? null
                : new OperatingPoint(id, label.isEmpty() ? id : label, speed, yaw, offset, demand, sigma);
    }

    private Demand demand() {
        double engineSpeed = number(CsvColumn.ENGINE_SPEED, 0);
        double accessories = number(CsvColumn.ACCESSORIES, 0);
        double airConditioning = number(CsvColumn.AIR_CONDITIONING, 0);
        double slope = number(CsvColumn.SLOPE, 0);
        double pump = number(CsvColumn.PUMP_RUN_ON, 0);
        boolean fans = yes();
        String kind = text(CsvColumn.DEMAND);
        switch (kind) {
            case "idle":
                return new Demand.Idle(accessories, airConditioning, engineSpeed);
            case "engine_off":
                return new Demand.EngineOff(pump, fans);
            case "road":
                speedNeeded(engineSpeed);
                return new Demand.Road(slope, accessories, engineSpeed);
            case "mix":
                speedNeeded(engineSpeed);
                List<Demand.Mode> modes = modes();
                return modes == null ? null : new Demand.Mix(modes, engineSpeed);
            default:
                fault(CsvColumn.DEMAND, kind.isEmpty() ? InputProblem.Code.MISSING : InputProblem.Code.NOT_UNDERSTOOD);
                return null;
        }
    }

    private void speedNeeded(double engineSpeed) {
        if (engineSpeed == 0) {
            fault(
                    CsvColumn.ENGINE_SPEED,
                    CsvText.word(text(CsvColumn.ENGINE_SPEED)),
                    DutyInputText.ABOVE_TO.with(CsvText.word(0), CsvText.word(CsvColumn.ENGINE_SPEED.range.max())),
                    InputProblem.Code.MISSING);
        }
    }

    private boolean yes() {
        String word = text(CsvColumn.FANS_RUN_ON);
        if (!word.isEmpty() && !word.equals("yes") && !word.equals("no")) {
            fault(CsvColumn.FANS_RUN_ON, InputProblem.Code.NOT_UNDERSTOOD);
        }
        return word.equals("yes");
    }

    private List<Demand.Mode> modes() {
        String text = text(CsvColumn.MODES);
        if (text.isEmpty()) {
            fault(CsvColumn.MODES, InputProblem.Code.MISSING);
            return null;
        }
        List<Demand.Mode> modes = new ArrayList<>();
        double sum = 0;
        for (String mode : text.split("\\s+")) {
            String[] shares = mode.split(":", -1);
            double[] v = new double[3];
            boolean good = shares.length == 3;
            for (int i = 0; good && i < 3; i++) {
                good = shares[i].matches("\\d+\\.?\\d*|\\.\\d+");
                v[i] = good ? Double.parseDouble(shares[i]) : 0;
            }
            if (!good) {
                fault(CsvColumn.MODES, CsvText.word(mode), CsvColumn.MODES.allowed, InputProblem.Code.NOT_UNDERSTOOD);
                return null;
            }
            if (v[0] > 1 || v[1] > 1 || !(v[2] > 0) || v[2] > 1.2) {
                fault(
                        CsvColumn.MODES,
                        CsvText.word(mode),
                        DutyInputText.SHARES_OF_A_MODE.with(),
                        InputProblem.Code.OUT_OF_RANGE);
                return null;
            }
            sum += v[0];
            modes.add(new Demand.Mode(v[0], v[1], v[2]));
        }
        if (Math.abs(sum - 1) > 1e-9) {
            fault(
                    CsvColumn.MODES,
                    CsvText.word(text),
                    DutyInputText.TIME_SHARE_SUM.with(),
                    InputProblem.Code.CONTRADICTION);
            return null;
        }
        return modes;
    }

    static OperatingPoint named(OperatingPoint p, String id) {
        return new OperatingPoint(
                id,
                p.label().isEmpty() ? id : p.label(),
                p.roadSpeedMPerS(),
                p.yawRad(),
                p.ambientOffsetK(),
                p.demand(),
                p.loadSigma());
    }

    static OperatingPoint labelled(OperatingPoint p, String label) {
        return new OperatingPoint(
                p.id(), label, p.roadSpeedMPerS(), p.yawRad(), p.ambientOffsetK(), p.demand(), p.loadSigma());
    }
}

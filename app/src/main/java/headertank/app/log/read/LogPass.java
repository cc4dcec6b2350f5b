package headertank.app.log.read;

import headertank.app.log.file.CellValue;
import headertank.app.log.file.LogHead;
import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogRows;
import headertank.app.log.file.LogSource;
import headertank.app.log.read.BadRow.Fault;
import java.io.IOException;

/** One walk through a log: its rows with their time and the numbers of some columns, and what is wrong with others. */
final class LogPass {

    /** Takes what is found. */
    interface Visitor {

        /**
         * @param line number of its line
         * @param timeS since the beginning of the stretch; NaN when no column tells the time
         * @param values as written, in the order of the columns that were asked for; NaN where there is none
         * @param begins whether the row begins a stretch
         * @param same whether its time is that of the row before
         */
        void row(long line, int stretch, double timeS, double[] values, boolean begins, boolean same);

        /** A row that is left out. */
        void bad(BadRow row);

        /**
         * A cell that is left out.
         *
         * @param which place of its column among those that were asked for
         * @param only whether it is the first of its row
         */
        void badCell(int which, BadRow cell, boolean only);
    }

    private final LogHead head;
    private final LogLimits limits;
    private final int[] columns;
    private final Visitor visitor;
    private final TimeLine line;
    private double[] values;
    private double[] held;
    private boolean holds;
    private double heldAt;
    private long heldLine;
    private String heldText = "";
    private long comments;

    /** @param columns indexes of the columns whose numbers are asked for */
    LogPass(LogHead head, LogLimits limits, int[] columns, Visitor visitor) {
        this.head = head;
        this.limits = limits;
        this.columns = columns.clone();
        this.visitor = visitor;
        line = new TimeLine(head);
        values = new double[columns.length];
        held = new double[columns.length];
    }

    TimeLine timeLine() {
        return line;
    }

    long comments() {
        return comments;
    }

    void run(LogSource source) throws IOException {
        try (LogRows rows = new LogRows(source, head, limits)) {
            while (rows.next()) {
                if (rows.isBroken()) {
                    visitor.bad(new BadRow(rows.line(), "", start(rows), Fault.CELLS));
                } else if (!rows.isHeadings()) {
                    row(rows);
                }
            }
            comments = rows.comments();
        }
        dropHeld();
        line.end();
    }

    private static String start(LogRows rows) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(4, rows.count()); i++) {
            text.append(i == 0 ? "" : " ").append(rows.text(i));
        }
        return text.append(rows.count() > 4 ? " …" : "").toString();
    }

    private void row(LogRows rows) {
        if (head.time().isEmpty()) {
            fill(rows);
            visitor.row(rows.line(), 0, Double.NaN, values, false, false);
            return;
        }
        int timeColumn = head.time().get().index();
        double t = rows.seconds(head.time().get());
        if (t == CellValue.BAD || Double.isNaN(t)) {
            visitor.bad(
                    new BadRow(rows.line(), head.headings().get(timeColumn).text(), rows.text(timeColumn), Fault.TIME));
            return;
        }
        t = line.unfolded(t);
        if (holds) {
            boolean goesOn = t >= heldAt && t - heldAt <= TimeLine.NEW_RUN_S && !line.isNext(t);
            if (goesOn) {
                takeHeld();
            } else {
                dropHeld();
            }
        }
        fill(rows);
        if (line.stretch() >= 0 && line.isSuspect(t)) {
            hold(rows, t, timeColumn);
        } else if (line.stretch() >= 0 && line.isOutOfOrder(t)) {
            visitor.bad(new BadRow(
                    rows.line(), head.headings().get(timeColumn).text(), rows.text(timeColumn), Fault.ORDER));
        } else {
            take(rows.line(), t, values);
        }
    }

    private void take(long number, double t, double[] row) {
        boolean same = line.isSame(t);
        boolean begins = line.take(number, t);
        visitor.row(number, line.stretch(), line.sinceBegin(), row, begins, same);
    }

    private void hold(LogRows rows, double t, int timeColumn) {
        double[] free = held;
        held = values;
        values = free;
        holds = true;
        heldAt = t;
        heldLine = rows.line();
        heldText = rows.text(timeColumn);
    }

    private void takeHeld() {
        holds = false;
        take(heldLine, heldAt, held);
    }

    private void dropHeld() {
        if (holds) {
            holds = false;
            String column =
                    head.headings().get(head.time().orElseThrow().index()).text();
            visitor.bad(new BadRow(heldLine, column, heldText, Fault.ORDER));
        }
    }

    private void fill(LogRows rows) {
        boolean only = true;
        for (int i = 0; i < columns.length; i++) {
            double v = rows.value(columns[i]);
            if (v == CellValue.BAD) {
                String heading = head.headings().get(columns[i]).text();
                visitor.badCell(i, new BadRow(rows.line(), heading, rows.text(columns[i]), Fault.NOT_A_NUMBER), only);
                only = false;
                v = CellValue.NONE;
            }
            values[i] = v;
        }
    }
}

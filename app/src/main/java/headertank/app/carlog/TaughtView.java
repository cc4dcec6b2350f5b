package headertank.app.carlog;

import headertank.app.chart.CurveChart;
import headertank.calc.verdict.Verdict;
import java.util.List;

/**
 * What a log teaches, in words of the reader.
 *
 * @param facts what was driven again and what was taken for granted
 * @param residual how far the car as known was off, before and, if asked for, after
 * @param learned whether it was learned from
 * @param doubts why the log may not be this car's, or the car has a fault; empty when nothing says so
 * @param duties each duty before and after
 * @param lines what moved most
 */
record TaughtView(
        CurveChart chart,
        List<String> facts,
        List<String> residual,
        boolean learned,
        List<String> doubts,
        List<DutyLine> duties,
        List<FactorLine> lines) {

    TaughtView {
        facts = List.copyOf(facts);
        residual = List.copyOf(residual);
        doubts = List.copyOf(doubts);
        duties = List.copyOf(duties);
        lines = List.copyOf(lines);
    }

    /** A duty without the log and with it. */
    record DutyLine(String label, Band before, Band after) {}

    /**
     * A margin.
     *
     * @param range from 5 to 95 %
     * @param width of that
     */
    record Band(String range, String width, Verdict verdict) {}

    /** A value or a factor of the model, how far it moved, and what is left of its spread. */
    record FactorLine(String name, String moved, String left) {}
}

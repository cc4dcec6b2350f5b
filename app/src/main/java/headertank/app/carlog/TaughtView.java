package headertank.app.carlog;

import headertank.app.chart.CurveChart;
import java.util.List;

/**
 * A log driven again, in words of the reader.
 *
 * @param facts what was driven again and what was taken for granted
 * @param residual how far the car was off, as its revision says, and as it is known where anything is
 */
record TaughtView(CurveChart chart, List<String> facts, List<String> residual) {

    TaughtView {
        facts = List.copyOf(facts);
        residual = List.copyOf(residual);
    }
}

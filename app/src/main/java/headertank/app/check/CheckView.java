package headertank.app.check;

import headertank.app.car.CarLine;
import headertank.app.chart.CurveChart;
import headertank.app.check.chart.MarginChart;
import headertank.app.check.chart.RunChart;
import headertank.app.check.chart.WhatIfChart;
import headertank.app.check.figure.FigureText;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredCheck;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * All that a page or a sheet of a check needs: the stored check, its car, the shop's way to show figures, and the drawings.
 *
 * @param margins drawing of the margins by duty id
 * @param runs drawing of the run by duty id, for duties that have one
 * @param whatIfs drawings of the same run with one thing changed, by duty id, for duties that have them
 */
public record CheckView(
        StoredCheck check,
        CarLine car,
        FigureText shown,
        Map<String, MarginChart> margins,
        Map<String, CurveChart> runs,
        Map<String, WhatIfChart> whatIfs) {

    /** Draws a stored check. */
    public static CheckView of(StoredCheck check, CarLine car, FigureText shown) {
        Map<String, MarginChart> margins = new LinkedHashMap<>();
        Map<String, CurveChart> runs = new LinkedHashMap<>();
        Map<String, WhatIfChart> whatIfs = new LinkedHashMap<>();
        for (DutyResult d : check.result().duties()) {
            margins.put(d.id(), MarginChart.of(d, shown));
            CheckResult all = check.result();
            d.run()
                    .filter(r -> !r.curves().none())
                    .ifPresent(r -> runs.put(d.id(), RunChart.of(r, all.coolantLimitK(), all.oilLimitK(), shown)));
            WhatIfChart.of(d, all.coolantLimitK(), shown).ifPresent(w -> whatIfs.put(d.id(), w));
        }
        return new CheckView(check, car, shown, margins, runs, whatIfs);
    }
}

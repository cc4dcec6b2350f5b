package headertank.app.check;

import headertank.app.car.CarLine;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * All that a page or a sheet of a check needs: the stored check, its car, the shop's way to show figures, and the drawings.
 *
 * @param margins drawing of the margins by duty id
 * @param runs drawing of the run by duty id, for duties that have one
 */
public record CheckView(
        StoredCheck check, CarLine car, Shown shown, Map<String, MarginChart> margins, Map<String, RunChart> runs) {

    /** Draws a stored check. */
    public static CheckView of(StoredCheck check, CarLine car, Shown shown) {
        Map<String, MarginChart> margins = new LinkedHashMap<>();
        Map<String, RunChart> runs = new LinkedHashMap<>();
        for (DutyResult d : check.result().duties()) {
            margins.put(d.id(), MarginChart.of(d, shown));
            d.run()
                    .ifPresent(r ->
                            runs.put(d.id(), RunChart.of(d, r, check.result().coolantLimitK(), shown)));
        }
        return new CheckView(check, car, shown, margins, runs);
    }
}

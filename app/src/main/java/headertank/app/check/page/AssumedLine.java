package headertank.app.check.page;

import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.CheckResult.AssumedValue;
import headertank.app.check.stored.DutyResult;
import headertank.calc.carspec.BuildField;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A value that nobody stated, with what not knowing it costs.
 *
 * @param key of the field
 * @param id of the field in the spec's form
 * @param costK how unsure it leaves the margin of the duty that it touches most, one standard deviation [K]; 0 where that is less
 *     than is worth a word or the value is a choice
 * @param cost the same in words
 * @param duty which duty that is
 */
record AssumedLine(
        String key, String id, String label, String value, String why, double costK, String cost, String duty) {

    public boolean isCostly() {
        return costK > 0;
    }

    /** All that was assumed, the costliest first. */
    static List<AssumedLine> of(CheckResult result, FigureText shown, ShopFigures figures) {
        return result.assumptions().stream()
                .map(a -> of(a, result, shown, figures))
                .sorted(Comparator.comparingDouble(AssumedLine::costK).reversed())
                .toList();
    }

    private static AssumedLine of(AssumedValue a, CheckResult result, FigureText shown, ShopFigures figures) {
        Optional<DutyResult> most = result.duties().stream()
                .filter(d -> cost(d, a.field()) > 0)
                .max(Comparator.comparingDouble(d -> cost(d, a.field())));
        double cost = most.map(d -> cost(d, a.field())).orElse(0.0);
        return new AssumedLine(
                a.field(),
                BuildField.ofKey(a.field()).map(BuildField::name).orElse(""),
                figures.label(a.field()),
                figures.value(a.field(), a.value(), a.token()),
                shown.said(a.why()),
                cost,
                cost > 0 ? "\u00b1\u00a0" + shown.span(cost) : "",
                most.map(shown::shortDuty).orElse(""));
    }

    private static double cost(DutyResult duty, String field) {
        return duty.unknowns().orElse(List.of()).stream()
                .filter(u -> u.field().equals(field))
                .mapToDouble(DutyResult.Unknown::marginK)
                .findFirst()
                .orElse(0);
    }
}

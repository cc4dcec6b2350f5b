package headertank.app.check.page;

import headertank.app.check.figure.FigureText;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.CheckResult.Condition;
import java.util.ArrayList;
import java.util.List;

/** The one list of what whoever signs a check accepts or clears up, for pages and paper. */
public final class Conditions {

    private Conditions() {}

    /** All conditions of a check, numbered from one. */
    public static List<NumberedCondition> of(CheckResult result, FigureText shown) {
        List<NumberedCondition> numbered = new ArrayList<>();
        for (Condition c : result.conditions()) {
            numbered.add(
                    new NumberedCondition(numbered.size() + 1, c.key(), about(c, result, shown), shown.said(c.text())));
        }
        return List.copyOf(numbered);
    }

    private static String about(Condition c, CheckResult result, FigureText shown) {
        String subject = shown.said(c.subject());
        return result.duty(c.duty())
                .map(d -> shown.words("check.condition.of-duty", shown.shortDuty(d), subject))
                .orElse(subject);
    }
}

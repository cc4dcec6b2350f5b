package headertank.app.duty;

import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import java.util.List;

/**
 * A fault of a text, for its page.
 *
 * @param line number of the line, 0 when it is about the whole
 * @param place column or line of the head
 */
public record DutyFault(int line, String place, String value, String allowed) {

    public static List<DutyFault> of(InputException e, DutyText words) {
        return e.problems().stream().map(p -> of(p, words)).toList();
    }

    private static DutyFault of(InputProblem problem, DutyText words) {
        return new DutyFault(
                problem.line(), problem.field(), brief(words.said(problem.value())), words.said(problem.allowed()));
    }

    private static String brief(String value) {
        return value.length() <= 80 ? value : value.substring(0, 79) + "…";
    }
}

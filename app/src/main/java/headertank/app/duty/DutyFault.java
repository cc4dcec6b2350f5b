package headertank.app.duty;

import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A fault of a text, for its page.
 *
 * @param line number of the line, 0 when it is about the whole
 * @param place column or line of the head
 */
public record DutyFault(int line, String place, String value, String allowed) {

    private static final Pattern PLACE = Pattern.compile("line (\\d+), (.*)");

    public static List<DutyFault> of(InputException e, DutyText words) {
        return e.problems().stream().map(p -> of(p, words)).toList();
    }

    private static DutyFault of(InputProblem problem, DutyText words) {
        String allowed = words.allowed(problem.allowed());
        Matcher place = PLACE.matcher(problem.field());
        return place.matches()
                ? new DutyFault(Integer.parseInt(place.group(1)), place.group(2), brief(problem.value()), allowed)
                : new DutyFault(0, problem.field(), brief(problem.value()), allowed);
    }

    private static String brief(String value) {
        return value.length() <= 80 ? value : value.substring(0, 79) + "…";
    }
}

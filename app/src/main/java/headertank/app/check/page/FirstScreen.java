package headertank.app.check.page;

import headertank.app.check.chart.MarginBar;
import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredVerdict;
import java.util.List;
import java.util.Optional;

/**
 * What the first screen of a check says about one duty, in words.
 *
 * @param duty the one that is shown whole
 * @param chance duty, day, and the chance to pass the limit against what is allowed
 * @param because what the verdict rests on where that is not the chance; empty where it is
 * @param peak how hot it gets, and what is left
 * @param bar the margin with its range; empty without a balance
 * @param others the other duties of the check, the worst first
 * @param conditions of the whole check
 * @param first what to do first
 * @param since what has changed since a check that was signed to leave; empty when there is none
 * @param unknowns what is known least, when nothing has changed
 */
public record FirstScreen(
        DutyResult duty,
        String chance,
        String because,
        String peak,
        Optional<MarginBar> bar,
        List<OtherDuty> others,
        List<NumberedCondition> conditions,
        List<Action> first,
        Optional<Since> since,
        List<Action> unknowns) {

    /** A duty in one line. */
    public record OtherDuty(String id, String name, StoredVerdict verdict, String margin) {}

    /**
     * Something to do to the car or to its spec.
     *
     * @param kind whether it is a change or a measurement
     * @param degrees what it buys, or how unsure the margin is without it
     * @param change id of the improvement that the spec's form types in; empty for a measurement
     * @param measure key of the field that is to be measured; empty for a change
     * @param field id of that field in the form
     */
    public record Action(Kind kind, String what, String degrees, String change, String measure, String field) {}

    /** Where an action's degrees come from. */
    public enum Kind {
        CHANGE,
        MEASURE
    }

    /**
     * The check that was signed last before this one, of an earlier revision.
     *
     * @param said what it came to, and how much margin has gone or come since
     * @param changes labels of what differs, in the order of the form
     */
    public record Since(CheckLine base, String said, List<String> changes) {}
}

package headertank.calc.verdict;

import headertank.calc.duty.Duty;
import java.util.List;

/**
 * A verdict on a car at one duty.
 *
 * @param outcome what the physics says
 * @param verdict go, go with conditions, no-go
 * @param findings what the verdict rests on, worst first
 */
public record DutyVerdict(DutyOutcome outcome, Verdict verdict, List<Finding> findings) {

    public DutyVerdict {
        findings = List.copyOf(findings);
    }

    /** @return the duty */
    public Duty duty() {
        return outcome.duty();
    }
}

package headertank.app.incident;

import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredCheck;
import headertank.calc.Rater;
import headertank.calc.duty.Duty;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** The duty for which a report is looked at. */
@Component
public class ReportedDuty {

    private final Checks checks;
    private final Revisions revisions;
    private final Supplier<Rater> rater;

    ReportedDuty(Checks checks, Revisions revisions, Supplier<Rater> rater) {
        this.checks = checks;
        this.revisions = revisions;
        this.rater = rater;
    }

    /** The reported duty; else the hardest of the good check that it is held against; else the first of the revision. */
    public Duty of(Incident incident) {
        return of(incident, incident.comparedCheckId().map(checks::byId), revisions.byId(incident.revisionId()));
    }

    Duty of(Incident incident, Optional<StoredCheck> good, Revision thatDay) {
        Map<String, Duty> known = rater.get().duties();
        if (known.containsKey(incident.duty())) {
            return known.get(incident.duty());
        }
        String hardest = good.flatMap(g -> g.result().duties().stream()
                        .filter(d -> known.containsKey(d.id()))
                        .min((a, b) -> Double.compare(a.coolantMarginK(), b.coolantMarginK())))
                .map(DutyResult::id)
                .orElse(thatDay.spec().dutyIds().get(0));
        return known.getOrDefault(hardest, known.values().iterator().next());
    }
}

package headertank.app.check.stored;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A stored check at a glance.
 *
 * @param verdicts one for each duty, in the order asked for
 * @param newerRevision number of a revision saved since, 0 when there is none
 * @param newerCalcCore whether a newer version of the physics has run since
 * @param changedPolicy whether the shop judges by other thresholds or limits now
 * @param changedEvidence whether other evidence of the car is used now
 */
public record CheckLine(
        long id,
        long carId,
        long revisionId,
        int revisionNumber,
        Instant createdAt,
        String authorName,
        List<DutyVerdictLine> verdicts,
        String calcCoreVersion,
        int newerRevision,
        boolean newerCalcCore,
        boolean changedPolicy,
        boolean changedEvidence,
        Optional<SignOff> signOff) {

    public CheckLine {
        verdicts = List.copyOf(verdicts);
    }

    /** A duty and its verdict. */
    public record DutyVerdictLine(String duty, String label, StoredVerdict verdict) {}

    /** The worst verdict of its duties. */
    public StoredVerdict worst() {
        return verdicts.stream()
                .map(DutyVerdictLine::verdict)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Whether something has changed since that the check does not know of. */
    public boolean outOfDate() {
        return newerRevision > 0 || newerCalcCore || changedPolicy || changedEvidence;
    }
}

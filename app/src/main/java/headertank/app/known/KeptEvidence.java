package headertank.app.known;

import headertank.app.carlog.LogEvidence;
import headertank.app.carspec.Revisions;
import headertank.app.evidence.EvidenceReader;
import headertank.app.evidence.Piece;
import headertank.app.evidence.PieceKind;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildDifference;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.evidence.Evidence;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** What kept evidence means to calc-core. */
@Component
class KeptEvidence implements EvidenceReader {

    private static final JsonMapper JSON = new JsonMapper();

    private final Revisions revisions;
    private final LogEvidence logs;

    KeptEvidence(Revisions revisions, LogEvidence logs) {
        this.revisions = revisions;
        this.logs = logs;
    }

    @Override
    public Build build(long revisionId) {
        return revisions.byId(revisionId).spec().build();
    }

    @Override
    public boolean sameParts(long revisionId, long otherId) {
        Build one = build(revisionId);
        Build other = build(otherId);
        return one.carClass() == other.carClass()
                && BuildDifference.between(one, other).stream()
                        .allMatch(d -> d.field().group() == FieldGroup.USE);
    }

    @Override
    public Optional<Evidence> read(Piece piece, Rater rater) {
        return piece.kind() == PieceKind.LOG
                ? logs.read(piece.carId(), piece.logId().orElseThrow(), rater).map(Evidence.class::cast)
                : SettledText.of(piece.said()).reading(rater).map(Evidence.class::cast);
    }

    @Override
    public String dutyId(Piece piece) {
        return JSON.readTree(piece.said()).path("duty").asString("");
    }
}

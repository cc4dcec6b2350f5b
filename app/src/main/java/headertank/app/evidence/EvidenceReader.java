package headertank.app.evidence;

import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.evidence.Evidence;
import java.util.Optional;

/** Says what kept evidence means to calc-core. */
public interface EvidenceReader {

    /** The car as a revision of the current shop describes it. */
    Build build(long revisionId);

    /**
     * What a piece says.
     *
     * @param rater with the duties that it may name
     * @return empty when it cannot be read as things are, such as of a duty that is switched off
     */
    Optional<Evidence> read(Piece piece, Rater rater);

    /** Whether two revisions of the current shop describe the same parts, whatever they say of the day and the driver. */
    boolean sameParts(long revisionId, long otherId);

    /** Id of the duty that a piece names, empty when it names none. */
    String dutyId(Piece piece);
}

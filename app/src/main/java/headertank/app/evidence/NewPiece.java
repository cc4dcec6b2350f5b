package headertank.app.evidence;

import java.util.Optional;

/**
 * A piece of evidence that is about to be kept.
 *
 * @param revisionId revision that describes the car as it was when this was seen
 * @param said canonical JSON
 */
public record NewPiece(long revisionId, PieceKind kind, Optional<Long> logId, String said) {}

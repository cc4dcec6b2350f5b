package headertank.app.evidence;

import java.util.List;

/**
 * What a car is learned from, before it is.
 *
 * @param revisionId revision that describes the car as it was when it was seen
 * @param revisionNumber its number
 * @param pieces what counts, in the order in which it came
 * @param ofOtherParts what is switched on and does not count, for the car had other parts then
 */
record LearningPlan(long revisionId, int revisionNumber, List<Piece> pieces, List<Piece> ofOtherParts) {}

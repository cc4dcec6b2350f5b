package headertank.app.evidence;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What was seen of a car and what that taught.
 *
 * @param lesson what it taught
 * @param pieces the evidence that it was learned from
 * @param used all evidence that is switched on, whether it counted or not
 */
public record Seen(Lesson lesson, List<Piece> pieces, List<Piece> used) {

    public Seen {
        pieces = List.copyOf(pieces);
        used = List.copyOf(used);
    }

    /** Id and revision of each piece that is switched on, by which it is seen later that other evidence is used. */
    public String usedText() {
        return used.stream().map(p -> p.id() + "@" + p.revisionId()).collect(Collectors.joining(","));
    }
}

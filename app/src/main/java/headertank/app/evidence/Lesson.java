package headertank.app.evidence;

import headertank.calc.carspec.Learned;
import java.util.List;

/**
 * What the evidence of a car taught, as it is kept.
 *
 * @param sha256 of its stored text, in hexadecimal digits
 * @param pieces ids of the evidence that it was learned from
 * @param unread ids of evidence that could not be read
 * @param problem {@link #NO_ANSWER} when the car as it is described could not have shown anything of the kind; else empty
 */
public record Lesson(long id, String sha256, Learned learned, List<Long> pieces, List<Long> unread, String problem) {

    static final String NO_ANSWER = "NO_ANSWER";

    public Lesson {
        pieces = List.copyOf(pieces);
        unread = List.copyOf(unread);
    }

    Lesson confirmed() {
        return new Lesson(id, sha256, learned.confirmed(), pieces, unread, problem);
    }
}

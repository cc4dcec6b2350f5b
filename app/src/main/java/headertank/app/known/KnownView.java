package headertank.app.known;

import headertank.app.check.stored.StoredVerdict;
import java.util.List;

/**
 * How well a car is known and by what, in words of the reader.
 *
 * @param known how well, in four words of our own
 * @param isPending whether something of it is being worked out
 * @param pending what is being worked out, and since when
 * @param notes what did not count, and why
 * @param doubts why this may not be the car that was seen, or has a fault; empty when nothing says so
 * @param duties each duty before and after
 * @param factors what moved or narrowed most
 * @param pieces the evidence in the order in which it came
 */
record KnownView(
        String known,
        boolean isPending,
        String pending,
        List<String> notes,
        List<String> doubts,
        List<DutyLine> duties,
        List<FactorLine> factors,
        List<PieceLine> pieces) {

    KnownView {
        notes = List.copyOf(notes);
        doubts = List.copyOf(doubts);
        duties = List.copyOf(duties);
        factors = List.copyOf(factors);
        pieces = List.copyOf(pieces);
    }

    /** A duty without the evidence and with it. */
    record DutyLine(String label, Band before, Band after) {}

    /**
     * A margin.
     *
     * @param range from 5 to 95 %
     * @param width of that
     */
    record Band(String range, String width, StoredVerdict verdict) {}

    /** A value or a factor of the model, how far it moved, and what is left of its spread. */
    record FactorLine(String name, String moved, String left) {}

    /**
     * A piece of evidence.
     *
     * @param what it says
     * @param logId its log; null for something else
     * @param came who added it and when
     * @param counts whether it is learned from
     * @param state whether it is used, and why
     * @param revision number of the revision that describes the car as it was then
     * @param isOlder whether the car has a newer revision
     * @param hash the first digits of the SHA-256 of what it says
     */
    record PieceLine(
            long id,
            String what,
            Long logId,
            String came,
            boolean counts,
            boolean used,
            String state,
            int revision,
            boolean isOlder,
            String hash) {}
}

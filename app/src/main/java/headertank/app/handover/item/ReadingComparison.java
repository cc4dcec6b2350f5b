package headertank.app.handover.item;

import headertank.calc.result.IdleExpectation.Band;

/**
 * A reading beside what is expected.
 *
 * @param difference reading less expected value, in SI
 */
public record ReadingComparison(double difference, Verdict verdict) {

    /** What the difference says. */
    public enum Verdict {
        AS_EXPECTED,
        TOO_LOW,
        TOO_HIGH
    }

    public static ReadingComparison of(double reading, Band band) {
        Verdict verdict =
                reading < band.low() ? Verdict.TOO_LOW : reading > band.high() ? Verdict.TOO_HIGH : Verdict.AS_EXPECTED;
        return new ReadingComparison(reading - band.expected(), verdict);
    }

    public boolean isOff() {
        return verdict != Verdict.AS_EXPECTED;
    }
}

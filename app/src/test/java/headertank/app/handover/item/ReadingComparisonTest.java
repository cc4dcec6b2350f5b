package headertank.app.handover.item;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.handover.item.ReadingComparison.Verdict;
import headertank.calc.result.IdleExpectation.Band;
import org.junit.jupiter.api.Test;

class ReadingComparisonTest {

    private static final Band BAND = new Band(20, 18, 23);

    @Test
    void aReadingIsAsExpectedUpToTheEndsOfTheBand() {
        assertThat(ReadingComparison.of(18, BAND).verdict()).isEqualTo(Verdict.AS_EXPECTED);
        assertThat(ReadingComparison.of(23, BAND).verdict()).isEqualTo(Verdict.AS_EXPECTED);
        assertThat(ReadingComparison.of(17.9, BAND)).isEqualTo(new ReadingComparison(17.9 - 20, Verdict.TOO_LOW));
        assertThat(ReadingComparison.of(23.1, BAND).verdict()).isEqualTo(Verdict.TOO_HIGH);
    }

    @Test
    void withoutAnUpperEndNothingIsTooHigh() {
        Band open = new Band(2000, 1500, Double.POSITIVE_INFINITY);
        assertThat(ReadingComparison.of(14000, open).verdict()).isEqualTo(Verdict.AS_EXPECTED);
    }
}

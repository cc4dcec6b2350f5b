package headertank.app.handover;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.handover.Comparison.Verdict;
import headertank.calc.IdleExpectation.Band;
import org.junit.jupiter.api.Test;

class ComparisonTest {

    private static final Band BAND = new Band(20, 18, 23);

    @Test
    void aReadingIsAsExpectedUpToTheEndsOfTheBand() {
        assertThat(Comparison.of(18, BAND).verdict()).isEqualTo(Verdict.AS_EXPECTED);
        assertThat(Comparison.of(23, BAND).verdict()).isEqualTo(Verdict.AS_EXPECTED);
        assertThat(Comparison.of(17.9, BAND)).isEqualTo(new Comparison(17.9 - 20, Verdict.TOO_LOW));
        assertThat(Comparison.of(23.1, BAND).verdict()).isEqualTo(Verdict.TOO_HIGH);
    }

    @Test
    void withoutAnUpperEndNothingIsTooHigh() {
        Band open = new Band(2000, 1500, Double.POSITIVE_INFINITY);
        assertThat(Comparison.of(14000, open).verdict()).isEqualTo(Verdict.AS_EXPECTED);
    }
}

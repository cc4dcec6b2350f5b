package headertank.app.check.figure;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredMessage;
import headertank.app.check.stored.StoredMessage.Amount;
import headertank.app.check.stored.StoredMessage.AmountKind;
import headertank.app.check.stored.StoredVerdict;
import headertank.calc.verdict.Finding;
import headertank.calc.verdict.VerdictText;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A sign before a finding, over everything that a finding can say. */
class FindingSignTest {

    /** A tick before bad news would be read as good news. */
    @Test
    void onlyWhatSaysThatALimitIsKeptHasATick() {
        Set<String> ticked = new TreeSet<>();
        for (StoredVerdict verdict : StoredVerdict.values()) {
            for (VerdictText text : VerdictText.values()) {
                for (Finding.Code code : Finding.Code.values()) {
                    DutyResult.FindingLine line = new DutyResult.FindingLine(
                            code.name(),
                            verdict,
                            new Amount(3, AmountKind.TEMPERATURE_DIFFERENCE),
                            new StoredMessage(text.code(), List.of()),
                            StoredMessage.NONE);
                    if (FindingSign.of(line) == FindingSign.HOLDS) {
                        assertThat(verdict).isEqualTo(StoredVerdict.GO);
                        ticked.add(text.name());
                    }
                    assertThat(FindingSign.of(line) == FindingSign.STOP).isEqualTo(verdict == StoredVerdict.NO_GO);
                }
            }
        }
        assertThat(ticked)
                .containsExactly("BELOW_BOILING", "MARGIN", "MARGIN_UNCERTAIN", "OIL_BELOW_LIMIT", "OIL_MARGIN");
        assertThat(FindingSign.of(plain("ALTERNATOR", 3))).isEqualTo(FindingSign.NOTE);
        assertThat(FindingSign.of(plain("OUTSIDE_SOURCE_RANGE", 3))).isEqualTo(FindingSign.NOTE);
        assertThat(FindingSign.of(plain("OIL_MARGIN", -3))).isEqualTo(FindingSign.NOTE);
        assertThat(FindingSign.of(plain("OIL_MARGIN", 3))).isEqualTo(FindingSign.HOLDS);
        assertThat(FindingSign.of(unknown("a-policy-of-others.all-well"))).isEqualTo(FindingSign.NOTE);
    }

    private static DutyResult.FindingLine plain(String code, double si) {
        return new DutyResult.FindingLine(
                code,
                StoredVerdict.GO,
                new Amount(si, AmountKind.TEMPERATURE_DIFFERENCE),
                StoredMessage.plain("as it was stored"),
                StoredMessage.NONE);
    }

    private static DutyResult.FindingLine unknown(String code) {
        return new DutyResult.FindingLine(
                "COOLANT_MARGIN",
                StoredVerdict.GO,
                new Amount(3, AmountKind.TEMPERATURE_DIFFERENCE),
                new StoredMessage(code, List.of()),
                StoredMessage.NONE);
    }
}

package headertank.app.check;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.check.figure.FigureTextTest;
import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.CheckResult.Condition;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredCheck;
import headertank.app.check.stored.StoredMessage;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.unit.UnitSystem;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a signature may say. */
class SignOffRulesTest {

    @Test
    void aCleanGoIsDelivered() {
        assertThat(faults(check(StoredVerdict.GO, false, 0), Decision.DELIVER, ""))
                .isEmpty();
    }

    @Test
    void aRefusedDutyIsHeldBackOrNamed() {
        StoredCheck refused = check(StoredVerdict.NO_GO, false, 0);
        assertThat(faults(refused, Decision.DELIVER, "Drift")).containsExactly("check.sign.refused");
        assertThat(faults(refused, Decision.DELIVER_WITH_CONDITIONS, "fine"))
                .containsExactly("check.sign.name-refused");
        assertThat(faults(refused, Decision.DELIVER_WITH_CONDITIONS, "Not to drift with it"))
                .isEmpty();
        assertThat(faults(refused, Decision.HOLD_BACK, "")).isEmpty();
    }

    @Test
    void conditionsAreAcceptedOneByOne() {
        StoredCheck conditions = check(StoredVerdict.GO_WITH_CONDITIONS, true, 0);
        assertThat(faults(conditions, Decision.DELIVER, "")).containsExactly("check.sign.has-conditions");
        assertThat(faults(conditions, Decision.DELIVER_WITH_CONDITIONS, "")).containsExactly("check.sign.not-accepted");
        assertThat(faults(conditions, Decision.DELIVER_WITH_CONDITIONS, "", "a"))
                .isEmpty();
    }

    @Test
    void anOutdatedCheckIsNotDelivered() {
        assertThat(faults(check(StoredVerdict.GO, false, 2), Decision.DELIVER, ""))
                .containsExactly("check.sign.out-of-date");
        assertThat(faults(check(StoredVerdict.GO, false, 2), Decision.HOLD_BACK, ""))
                .isEmpty();
    }

    private static List<String> faults(StoredCheck check, Decision decision, String remark, String... accepted) {
        return SignOffRules.faults(
                        check,
                        new SignOffForm(decision, remark, List.of(accepted)),
                        FigureTextTest.in(UnitSystem.METRIC))
                .stream()
                .map(SignOffFault::key)
                .toList();
    }

    private static StoredCheck check(StoredVerdict verdict, boolean condition, int newer) {
        DutyResult drift = new DutyResult(
                "drift",
                "Drift",
                verdict,
                "run",
                false,
                1,
                Optional.empty(),
                0,
                0,
                1,
                1,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        List<Condition> conditions = condition
                ? List.of(new Condition("a", "drift", Condition.subject("ALTERNATOR"), StoredMessage.plain("do")))
                : List.of();
        CheckResult result = new CheckResult(
                "0.1.0",
                1,
                0,
                380,
                400,
                310,
                "HEAD",
                List.of(drift),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                conditions,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        CheckLine line = new CheckLine(
                1, 1, 1, 1, Instant.EPOCH, "P", List.of(), "0.1.0", newer, false, false, false, Optional.empty());
        return new StoredCheck(line, result, "", "");
    }
}

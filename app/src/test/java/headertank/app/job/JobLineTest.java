package headertank.app.job;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.gate.Stage;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a job is late, and where its next step is done. */
class JobLineTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 1);

    @ParameterizedTest
    @CsvSource({"2026-02-27, 2, false", "2026-02-28, 1, false", "2026-03-01, 0, true", "2026-03-02, 0, false"})
    void anOpenJobIsLateFromTheDayAfterItsPromise(LocalDate promised, long late, boolean due) {
        assertThat(line(Stage.TO_RATE, promised).daysLate(TODAY)).isEqualTo(late);
        assertThat(line(Stage.TO_RATE, promised).isDue(TODAY)).isEqualTo(due);
    }

    @Test
    void aClosedJobIsNeverLate() {
        assertThat(line(Stage.HANDED_OVER, TODAY.minusDays(9)).daysLate(TODAY)).isZero();
        assertThat(line(Stage.CALLED_OFF, TODAY).isDue(TODAY)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "TO_DESCRIBE, /cars/7/spec",
        "TO_RATE, /cars/7/revisions/3/check",
        "TO_SIGN, /checks/11",
        "TO_GO_THROUGH, /checks/11/handover",
        "SENT_BACK, /checks/11/handover",
        "FAULT_OPEN, /checks/11/handover",
        "READY, /jobs/5",
        "STAYS, /checks/11",
        "PAUSED, /jobs/5"
    })
    void theNextStepHasItsPage(Stage stage, String path) {
        assertThat(line(stage, TODAY).nextPath()).isEqualTo(path);
    }

    @Test
    void aPromiseLiesBetweenTodayAndTwoYearsAhead() {
        assertThat(JobForm.isSensible(TODAY, TODAY)).isTrue();
        assertThat(JobForm.isSensible(TODAY.minusDays(1), TODAY)).isFalse();
        assertThat(JobForm.isSensible(TODAY.plusYears(2), TODAY)).isTrue();
        assertThat(JobForm.isSensible(TODAY.plusYears(2).plusDays(1), TODAY)).isFalse();
    }

    private static JobLine line(Stage stage, LocalDate promised) {
        return new JobLine(5, 7, "A 1", "Coupe", "C", "look", promised, stage, Optional.of(3), Optional.of(11L));
    }
}
